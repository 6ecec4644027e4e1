package lampwright.tasks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.search.Matching;
import lampwright.setup.SetupId;
import lampwright.store.SavedSearches;
import lampwright.store.Setups;
import lampwright.store.StudioTransaction;

/** Tells in one transaction what is new of what kept searches find, and keeps what is not. */
final class NewsTelling {

  private final StudioTransaction in;
  private final SavedSearches searches;
  private final List<Found> found;
  private final Map<String, Optional<Set<SetupId>>> seen;

  /**
   * What a search finds now.
   *
   * @param waiting how many setups a kit is not judged for yet
   */
  record Found(String search, Matching matching, int waiting) {

    boolean isSettled() {
      return waiting == 0 && matching.isSettled();
    }
  }

  /**
   * What is to be said of it.
   *
   * @param isTold whether it can be told what is new
   * @param waiting how many setups a kit is not judged for yet
   * @param isSettled whether the index and the model of sentences are there, see {@link Matching}
   */
  record Told(
      long total, List<SearchNews.NewSetup> news, boolean isTold, int waiting, boolean isSettled) {}

  NewsTelling(StudioTransaction in, List<Found> found) {
    this.in = in;
    this.searches = new SavedSearches(in);
    this.found = List.copyOf(found);
    this.seen = searches.seen(found.stream().map(Found::search).toList());
  }

  static Set<SetupId> setups(Matching matching) {
    return matching.ids().stream().map(SetupId::new).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Tells of each.
   *
   * @param isLooking whether the person looks at all that is found
   */
  List<Told> tell(boolean isLooking) {
    Map<String, Set<SetupId>> fresh = new HashMap<>();
    Set<SetupId> all = new HashSet<>();
    for (Found one : found) {
      Set<SetupId> unseen = new HashSet<>(setups(one.matching()));
      before(one).ifPresentOrElse(unseen::removeAll, unseen::clear);
      fresh.put(one.search(), unseen);
      all.addAll(unseen);
    }
    List<Setups.LastChange> changes = new Setups(in).lastChanges(all, Sight.ask(in).standings());
    List<Told> told = new ArrayList<>();
    for (Found one : found) {
      Set<SetupId> unseen = fresh.getOrDefault(one.search(), Set.of());
      told.add(told(one, changes.stream().filter(c -> unseen.contains(c.id())).toList()));
      if (isLooking) {
        searches.look(one.search(), lookedAt(one));
      } else {
        keep(one, changes.stream().filter(c -> unseen.contains(c.id())).toList());
      }
    }
    return told;
  }

  private Told told(Found one, List<Setups.LastChange> unseen) {
    return new Told(
        one.matching().total(),
        unseen.stream()
            .filter(change -> !change.by().equals(in.person()))
            .map(change -> new SearchNews.NewSetup(change.id(), change.title()))
            .toList(),
        one.matching().isWhole(),
        one.waiting(),
        one.matching().isSettled());
  }

  /** What the person changed themselves they know; where nothing was kept yet, a beginning. */
  private void keep(Found one, List<Setups.LastChange> unseen) {
    Set<SetupId> own =
        unseen.stream()
            .filter(change -> change.by().equals(in.person()))
            .map(Setups.LastChange::id)
            .collect(Collectors.toUnmodifiableSet());
    if (!own.isEmpty()) {
      searches.know(one.search(), own);
    }
    if (before(one).isEmpty() && one.matching().isWhole() && one.isSettled()) {
      searches.begin(one.search(), setups(one.matching()));
    }
  }

  /** What is seen from now on: where something is missing yet, also what was seen before. */
  private Optional<Set<SetupId>> lookedAt(Found one) {
    Set<SetupId> now = new LinkedHashSet<>(setups(one.matching()));
    if (!one.isSettled()) {
      before(one).ifPresent(now::addAll);
    }
    return one.matching().isWhole() && now.size() <= SavedSearches.MOST_SEEN
        ? Optional.of(now)
        : Optional.empty();
  }

  private Optional<Set<SetupId>> before(Found one) {
    return seen.getOrDefault(one.search(), Optional.empty());
  }
}
