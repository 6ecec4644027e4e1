package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.SavedSearches;
import lampwright.store.StoredSearch;
import lampwright.store.StudioTransaction;

/** Keeps the searches of each member, which nobody else ever sees; {@link SearchNews} runs them. */
public final class SearchKeeping {

  /** How many searches a member may keep in a studio. */
  public static final int MOST_SEARCHES = 50;

  private final Database database;
  private final SearchNews news;
  private final Ids ids;

  public SearchKeeping(Database database, SearchNews news, Ids ids) {
    this.database = database;
    this.news = news;
    this.ids = ids;
  }

  /**
   * Keeps a new search. What it finds now is nothing new.
   *
   * @throws Refused Invalid where it cannot be understood, Clash where one has that name or there
   *     are too many
   */
  public KeptSearch create(Caller caller, StudioId studio, SavedSearch search, Once once) {
    Optional<Set<SetupId>> now = news.foundNow(caller, studio, search.question());
    return KeptSearch.of(
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.READ_SETUPS);
              SavedSearches searches = new SavedSearches(in);
              searches.hold();
              return once.make(in, ids, id -> create(searches, id, search, now), searches::find);
            }));
  }

  private static StoredSearch create(
      SavedSearches searches, String id, SavedSearch search, Optional<Set<SetupId>> now) {
    mustBeFree(searches, search, id);
    if (searches.count() >= MOST_SEARCHES) {
      throw new Refused(
          new Refusal.Clash(
              "You keep " + MOST_SEARCHES + " searches here already. Delete one first."));
    }
    return searches.create(id, search.name(), search.nameKey(), search.question(), now);
  }

  private static void mustBeFree(SavedSearches searches, SavedSearch search, String id) {
    if (searches.isTaken(search.nameKey(), id)) {
      throw new Refused(
          new Refusal.Clash(
              "You keep a search named “" + search.name() + "” already. Maybe another name?"));
    }
  }

  /** One of the caller's. */
  public KeptSearch get(Caller caller, StudioId studio, String id) {
    return KeptSearch.of(database.inStudio(studio, caller.asker(), in -> stored(in, id)));
  }

  /**
   * Puts another name and question in the place of one's.
   *
   * @param basedOn the revision that was looked at
   */
  public KeptSearch replace(
      Caller caller, StudioId studio, String id, int basedOn, SavedSearch search) {
    boolean same = get(caller, studio, id).document().question().equals(search.question());
    Optional<Set<SetupId>> now =
        same ? Optional.empty() : news.foundNow(caller, studio, search.question());
    return KeptSearch.of(
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              stored(in, id);
              SavedSearches searches = new SavedSearches(in);
              searches.hold();
              mustBeFree(searches, search, id);
              Cataloguing.mustBeSaved(
                  searches.replace(
                      id, basedOn, search.name(), search.nameKey(), search.question()));
              if (!same) {
                searches.look(id, now);
              }
              return stored(in, id);
            }));
  }

  /** Forgets one. */
  public void delete(Caller caller, StudioId studio, String id, int basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          stored(in, id);
          return Cataloguing.mustBeSaved(new SavedSearches(in).delete(id, basedOn));
        });
  }

  /** The names of the caller's searches. */
  public List<KeptSearch> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return new SavedSearches(in).list().stream().map(KeptSearch::of).toList();
        });
  }

  static StoredSearch stored(StudioTransaction in, String id) {
    Leave.ask(in, Permission.READ_SETUPS);
    return new SavedSearches(in).find(id).orElseThrow(Refused::notFound);
  }
}
