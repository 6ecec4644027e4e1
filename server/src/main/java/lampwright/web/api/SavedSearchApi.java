package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.people.Ids;
import lampwright.tasks.KeptSearch;
import lampwright.tasks.Refused;
import lampwright.tasks.SavedSearch;
import lampwright.tasks.SearchKeeping;
import lampwright.tasks.SearchNews;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The searches that a member keeps: list, keep, read, change, delete, and what they find anew. */
public final class SavedSearchApi {

  /** How many new setups are named; more are only counted. */
  private static final int MOST_NAMED = 100;

  private final Door door;
  private final SearchKeeping searches;
  private final SearchNews news;

  public SavedSearchApi(Door door, SearchKeeping searches, SearchNews news) {
    this.door = door;
    this.searches = searches;
    this.news = news;
  }

  private record One(
      String id, int revision, Instant createdAt, Instant changedAt, Map<String, Object> document) {

    static One of(KeptSearch search) {
      return new One(
          search.id(),
          search.revision(),
          search.createdAt(),
          search.changedAt(),
          SavedSearch.FORM.writeObject(search.document()));
    }
  }

  private record Item(
      String id,
      String name,
      String question,
      int revision,
      Instant createdAt,
      Instant seenAt,
      Optional<Long> total,
      Optional<Integer> unseen,
      Optional<String> problem) {

    static Item of(SearchNews.Looked looked) {
      KeptSearch search = looked.search();
      return new Item(
          search.id(),
          search.document().name(),
          search.document().question(),
          search.revision(),
          search.createdAt(),
          search.seenAt(),
          looked.question().map(_ -> looked.total()),
          looked.question().map(_ -> looked.news().size()),
          looked.problem());
    }
  }

  private record All(List<Item> items, int total, Optional<String> next) {}

  private record NewSetup(String id, String title) {}

  private record News(
      Instant seenAt,
      Optional<Long> total,
      Optional<Integer> unseen,
      List<NewSetup> items,
      Optional<String> problem) {

    static News of(SearchNews.Looked looked) {
      return new News(
          looked.search().seenAt(),
          looked.question().map(_ -> looked.total()),
          looked.question().map(_ -> looked.news().size()),
          looked.news().stream()
              .limit(MOST_NAMED)
              .map(setup -> new NewSetup(setup.id().text(), setup.title()))
              .toList(),
          looked.problem());
    }
  }

  /** What is read here. */
  static Form<SavedSearch> form() {
    return SavedSearch.FORM;
  }

  /** All of the caller's, by name, with how much each finds and how much of it is new to them. */
  public void list(Context context) {
    List<Item> items =
        news.list(door.caller(context), SetupApi.studio(context)).stream().map(Item::of).toList();
    context.json(new All(items, items.size(), Optional.empty()));
  }

  /** Keeps a new one. */
  public void create(Context context) {
    SavedSearch document = Documents.read(context, SavedSearch.FORM);
    KeptSearch created =
        searches.create(
            door.caller(context), SetupApi.studio(context), document, Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id());
    Preconditions.show(context, created.revision());
    context.json(One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptSearch search = current(context);
    if (!Preconditions.isKnown(context, search.revision())) {
      context.json(One.of(search));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, SavedSearch.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptSearch now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, SavedSearch.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, SavedSearch document) {
    KeptSearch replaced =
        searches.replace(
            door.caller(context), SetupApi.studio(context), id(context), based, document);
    Preconditions.show(context, replaced.revision());
    context.json(One.of(replaced));
  }

  /** Forgets it. */
  public void delete(Context context) {
    searches.delete(door.caller(context), SetupApi.studio(context), id(context), basedOn(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** What is new of what it finds. */
  public void news(Context context) {
    context.json(News.of(news.get(door.caller(context), SetupApi.studio(context), id(context))));
  }

  /** The caller has looked: nothing that it finds now is new to them any more. */
  public void look(Context context) {
    context.json(News.of(news.look(door.caller(context), SetupApi.studio(context), id(context))));
  }

  private KeptSearch current(Context context) {
    return searches.get(door.caller(context), SetupApi.studio(context), id(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static String id(Context context) {
    String text = context.pathParam("search");
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return text;
  }
}
