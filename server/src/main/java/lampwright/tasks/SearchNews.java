package lampwright.tasks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.document.Problem;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.StudioId;
import lampwright.search.IndexFailure;
import lampwright.search.Matching;
import lampwright.search.Question;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.SavedSearches;
import lampwright.store.StoredSearch;

/**
 * What kept searches find, and what of it is new to their owner: what matches now, did not when
 * they last looked, and was not changed last by themselves. What they changed themselves counts as
 * seen from then on.
 */
public final class SearchNews {

  private static final int MOST_REMEMBERED = 2_000;
  private static final String TOO_MANY =
      "It finds more than "
          + SavedSearches.MOST_SEEN
          + " setups, and of so many it is not told what is new. Maybe narrow it?";

  private final Database database;
  private final Finding finding;
  private final QuestionReader reader;
  private final Map<Whose, Counted> remembered = new LinkedHashMap<>(16, 0.75f, true);

  public SearchNews(Database database, Finding finding, QuestionReader reader) {
    this.database = database;
    this.finding = finding;
    this.reader = reader;
  }

  /** A setup that is new to somebody. */
  public record NewSetup(SetupId id, String title) {}

  /**
   * What a kept search finds for its owner.
   *
   * @param question empty where it cannot be understood any more
   * @param total how many setups; none where it cannot be understood
   * @param news what is new, the last changed first
   * @param problem one line where it cannot be understood, finds too much to tell what is new, or a
   *     kit is not judged for all yet
   */
  public record Looked(
      KeptSearch search,
      Optional<Question> question,
      long total,
      List<NewSetup> news,
      Optional<String> problem) {
    public Looked {
      news = List.copyOf(news);
    }
  }

  private record Whose(StudioId studio, PersonId person, Reach reach) {}

  /** A question, or why there is none. */
  private record Read(StoredSearch search, Optional<Question> question, Optional<String> problem) {}

  /** All that a count comes from: where none of it differs, the count is the same. */
  private record From(List<StoredSearch> searches, List<Finding.Narrowed> narrowed, String shown) {}

  private record Counted(From from, int news) {}

  /** All of the caller's searches with what they find, by name. */
  public List<Looked> list(Caller caller, StudioId studio) {
    List<StoredSearch> searches =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Sight.ask(in);
              return new SavedSearches(in).list();
            });
    return looked(caller, studio, searches, false);
  }

  /** One with what it finds. */
  public Looked get(Caller caller, StudioId studio, String id) {
    return looked(caller, studio, List.of(one(caller, studio, id)), false).getFirst();
  }

  /** The caller looks at what one finds: from here on nothing of that is new. */
  public Looked look(Caller caller, StudioId studio, String id) {
    looked(caller, studio, List.of(one(caller, studio, id)), true);
    return get(caller, studio, id);
  }

  private StoredSearch one(Caller caller, StudioId studio, String id) {
    return database.inStudio(studio, caller.asker(), in -> SearchKeeping.stored(in, id));
  }

  /**
   * How many setups are new to the caller in all of their searches together. Whoever keeps none
   * costs one look-up; others are searched for again only where something has changed.
   */
  public int count(Caller caller, StudioId studio) {
    List<StoredSearch> searches =
        database.inStudio(studio, caller.asker(), in -> new SavedSearches(in).list());
    if (searches.isEmpty()) {
      return 0;
    }
    try {
      List<Read> reads = read(caller, studio, searches);
      String shown = finding.shown(studio);
      From from = new From(searches, narrow(caller, studio, reads, Duration.ZERO), shown);
      Whose whose = new Whose(studio, caller.person().id(), caller.reach());
      Optional<Counted> before = remembered(whose);
      if (before.isPresent() && before.get().from().equals(from)) {
        return before.get().news();
      }
      Set<NewSetup> all = new HashSet<>();
      List<NewsTelling.Told> told = tell(caller, studio, understood(reads), from.narrowed(), false);
      told.forEach(one -> all.addAll(one.news()));
      if (told.stream().allMatch(NewsTelling.Told::isSettled)) {
        remember(whose, new Counted(from, all.size()));
      }
      return all.size();
    } catch (IndexFailure e) {
      // Pages that need no index are not to fail for it; the next one tells.
      return 0;
    }
  }

  private synchronized Optional<Counted> remembered(Whose whose) {
    return Optional.ofNullable(remembered.get(whose));
  }

  private synchronized void remember(Whose whose, Counted counted) {
    remembered.put(whose, counted);
    if (remembered.size() > MOST_REMEMBERED) {
      remembered.remove(remembered.keySet().iterator().next());
    }
  }

  /**
   * What a question finds now.
   *
   * @return empty where that is more than is kept, or not told yet
   * @throws Refused Invalid at {@code /question} where it cannot be understood
   */
  Optional<Set<SetupId>> foundNow(Caller caller, StudioId studio, String question) {
    Question asked =
        reader.read(studio, question, filters -> finding.locate(caller, studio, filters));
    Finding.Narrowed narrowed =
        finding.narrow(caller, studio, List.of(asked), KitJudging.LONGEST).getFirst();
    Matching matching = finding.matching(narrowed, SavedSearches.MOST_SEEN);
    return matching.isWhole() && matching.isSettled() && narrowed.notJudged() == 0
        ? Optional.of(NewsTelling.setups(matching))
        : Optional.empty();
  }

  private List<Read> read(Caller caller, StudioId studio, List<StoredSearch> searches) {
    return searches.stream().map(search -> read(caller, studio, search)).toList();
  }

  private Read read(Caller caller, StudioId studio, StoredSearch search) {
    try {
      return new Read(
          search,
          Optional.of(
              reader.read(
                  studio, search.question(), filters -> finding.locate(caller, studio, filters))),
          Optional.empty());
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Invalid(List<Problem> problems)) {
        return new Read(
            search,
            Optional.empty(),
            Optional.of(problems.stream().map(Problem::message).collect(Collectors.joining(" "))));
      }
      throw refused;
    }
  }

  private static List<Read> understood(List<Read> reads) {
    return reads.stream().filter(read -> read.question().isPresent()).toList();
  }

  private List<Finding.Narrowed> narrow(
      Caller caller, StudioId studio, List<Read> reads, Duration patience) {
    return finding.narrow(
        caller,
        studio,
        reads.stream().flatMap(read -> read.question().stream()).toList(),
        patience);
  }

  private List<Looked> looked(
      Caller caller, StudioId studio, List<StoredSearch> searches, boolean isLooking) {
    List<Read> reads = read(caller, studio, searches);
    List<Read> understood = understood(reads);
    List<NewsTelling.Told> told =
        tell(
            caller,
            studio,
            understood,
            narrow(caller, studio, reads, KitJudging.LONGEST),
            isLooking);
    Map<String, NewsTelling.Told> byId = new HashMap<>();
    for (int i = 0; i < told.size(); i++) {
      byId.put(understood.get(i).search().id(), told.get(i));
    }
    return reads.stream()
        .map(read -> looked(read, Optional.ofNullable(byId.get(read.search().id()))))
        .toList();
  }

  private static Looked looked(Read read, Optional<NewsTelling.Told> told) {
    return new Looked(
        KeptSearch.of(read.search()),
        read.question(),
        told.map(one -> one.total()).orElse(0L),
        told.map(one -> one.news()).orElse(List.of()),
        read.problem().or(() -> told.flatMap(SearchNews::lack)));
  }

  private static Optional<String> lack(NewsTelling.Told told) {
    if (!told.isTold()) {
      return Optional.of(TOO_MANY);
    }
    return told.waiting() == 0
        ? Optional.empty()
        : Optional.of(
            "The kit is still to be held against "
                + told.waiting()
                + (told.waiting() == 1 ? " setup" : " setups")
                + ", which may be missing here: look again.");
  }

  private List<NewsTelling.Told> tell(
      Caller caller,
      StudioId studio,
      List<Read> reads,
      List<Finding.Narrowed> narrowed,
      boolean isLooking) {
    if (reads.isEmpty()) {
      return List.of();
    }
    List<NewsTelling.Found> found = new ArrayList<>();
    for (int i = 0; i < reads.size(); i++) {
      found.add(
          new NewsTelling.Found(
              reads.get(i).search().id(),
              finding.matching(narrowed.get(i), SavedSearches.MOST_SEEN),
              narrowed.get(i).notJudged()));
    }
    return database.inStudio(
        studio, caller.asker(), in -> new NewsTelling(in, found).tell(isLooking));
  }
}
