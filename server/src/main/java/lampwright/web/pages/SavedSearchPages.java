package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.tasks.Caller;
import lampwright.tasks.KeptSearch;
import lampwright.tasks.Leave;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SavedSearch;
import lampwright.tasks.SearchKeeping;
import lampwright.tasks.SearchNews;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The page of the searches that somebody keeps, and what is done there. */
public final class SavedSearchPages {

  private static final int NEWEST_SHOWN = 5;

  private final Door door;
  private final SearchKeeping searches;
  private final SearchNews news;
  private final Templates templates;
  private final StudioLayouts layouts;

  public SavedSearchPages(
      Door door,
      SearchKeeping searches,
      SearchNews news,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.searches = searches;
    this.news = news;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/saved-searches";
  }

  /** Shows them all: {@code /studios/{studio}/saved-searches}. */
  public void list(Context context) {
    show(context, Optional.empty(), FormErrors.none());
  }

  private void show(Context context, Optional<SavedSearchesPage.Again> again, FormErrors errors) {
    StudioId studio = studio(context);
    Wording words = layouts.words(context);
    List<SearchNews.Looked> all = news.list(door.caller(context), studio);
    templates.show(
        context,
        "savedSearches",
        new SavedSearchesPage(
            layouts.of(context, studio, words.say("pages.saved.title")),
            door.csrfToken(context),
            all.stream().map(looked -> card(studio, looked, words)).toList(),
            again,
            errors,
            SetupPages.findPath(studio)));
  }

  private static SavedSearchesPage.Card card(
      StudioId studio, SearchNews.Looked looked, Wording words) {
    KeptSearch search = looked.search();
    int fresh = looked.news().size();
    return new SavedSearchesPage.Card(
        search.id(),
        search.revision(),
        search.document().name(),
        looked.question().map(question -> asked(question, words)).orElse(List.of()),
        looked.question().isEmpty() ? "" : words.count("pages.find.total", looked.total()),
        fresh == 0 ? "" : words.say("pages.saved.fresh", fresh),
        looked.news().stream()
            .limit(NEWEST_SHOWN)
            .map(setup -> new Link(setup.title(), SetupPages.setupPath(studio, setup.id())))
            .toList(),
        Math.max(0, fresh - NEWEST_SHOWN),
        looked.problem().orElse(""),
        path(studio) + "/" + search.id());
  }

  private static List<String> asked(Question question, Wording words) {
    List<String> asked = new ArrayList<>();
    if (!question.text().isBlank()) {
      asked.add("“" + question.text().strip() + "”");
    }
    question.filters().forEach(filter -> asked.add(new FilterWords(words).of(filter)));
    if (question.standing().archived()) {
      asked.add(words.say("pages.saved.putBy"));
    }
    if (question.order() == Question.Order.NEAR) {
      asked.add(words.say("pages.saved.nearest"));
    }
    if (question.order() == Question.Order.OFF) {
      asked.add(words.say("pages.saved.leastOff"));
    }
    return asked;
  }

  /** What the find page suggests as a name. */
  static String suggestedName(String text, List<String> marks) {
    String name =
        String.join(
            ", ",
            Stream.concat(Stream.of(text).filter(typed -> !typed.isBlank()), marks.stream())
                .toList());
    return name.codePoints()
        .limit(SavedSearch.LONGEST_NAME)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString()
        .strip();
  }

  /** Keeps a search. */
  public void keep(Context context) {
    StudioId studio = studio(context);
    FormFields sent = Body.form(context);
    String name = sent.get(SavedSearchesPage.NAME).strip();
    String question = sent.get(SavedSearchesPage.QUESTION);
    try {
      searches.create(door.caller(context), studio, sound(name, question), Once.unkeyed());
      context.redirect(path(studio), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      FormErrors errors = errors(refused, SavedSearchesPage.NAME, layouts.words(context));
      context.status(status(refused));
      show(context, Optional.of(new SavedSearchesPage.Again(path(studio), name, question)), errors);
    }
  }

  /** Opens one: what it finds is no news from here on. */
  public void open(Context context) {
    StudioId studio = studio(context);
    SearchNews.Looked looked = news.look(door.caller(context), studio, id(context));
    context.redirect(
        SetupPages.findPath(studio) + "?" + looked.search().document().question(),
        HttpStatus.SEE_OTHER);
  }

  /** Gives one another name. */
  public void rename(Context context) {
    StudioId studio = studio(context);
    String id = id(context);
    FormFields sent = Body.form(context);
    Caller caller = door.caller(context);
    String question = searches.get(caller, studio, id).document().question();
    try {
      searches.replace(
          caller,
          studio,
          id,
          revision(sent),
          sound(sent.get(SavedSearchesPage.NAME).strip(), question));
      context.redirect(path(studio), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      FormErrors errors =
          errors(refused, SavedSearchesPage.NAME + "-" + id, layouts.words(context));
      context.status(status(refused));
      show(context, Optional.empty(), errors);
    }
  }

  /** Forgets one. */
  public void remove(Context context) {
    StudioId studio = studio(context);
    try {
      searches.delete(door.caller(context), studio, id(context), revision(Body.form(context)));
      context.redirect(path(studio), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      FormErrors errors = errors(refused, "", layouts.words(context));
      context.status(status(refused));
      show(context, Optional.empty(), errors);
    }
  }

  private static SavedSearch sound(String name, String question) {
    return switch (SavedSearch.FORM.read(
        Map.of(SavedSearchesPage.NAME, name, SavedSearchesPage.QUESTION, question))) {
      case Reading.Sound<SavedSearch>(SavedSearch value) -> value;
      case Reading.Faulty<SavedSearch> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  private static FormErrors errors(Refused refused, String nameField, Wording words) {
    return new FormErrors(
        switch (refused.refusal()) {
          case Refusal.Invalid(var problems) ->
              problems.stream()
                  .map(
                      problem ->
                          new FormErrors.FormError(
                              problem.pointer().equals("/" + SavedSearchesPage.NAME)
                                  ? nameField
                                  : "",
                              problem.message()))
                  .toList();
          case Refusal.Clash(String what) -> List.of(new FormErrors.FormError(nameField, what));
          case Refusal.Stale _ ->
              List.of(new FormErrors.FormError("", words.say("finding.saved.changedSince")));
          default -> throw refused;
        });
  }

  private static HttpStatus status(Refused refused) {
    return switch (refused.refusal()) {
      case Refusal.Clash _ -> HttpStatus.CONFLICT;
      case Refusal.Stale _ -> HttpStatus.PRECONDITION_FAILED;
      default -> HttpStatus.UNPROCESSABLE_CONTENT;
    };
  }

  private static int revision(FormFields sent) {
    String revision = sent.get(SavedSearchesPage.REVISION);
    return revision.matches("[1-9]\\d{0,8}") ? Integer.parseInt(revision) : 0;
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  private static String id(Context context) {
    String text = context.pathParam("search");
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return text;
  }
}
