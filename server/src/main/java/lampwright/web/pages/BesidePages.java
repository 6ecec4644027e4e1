package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.setup.SetupId;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Comparing;
import lampwright.tasks.Finding;
import lampwright.tasks.Leave;
import lampwright.tasks.Signing;
import lampwright.tasks.Tracing;
import lampwright.web.http.Door;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** Two setups side by side, and the page where the second one is chosen. */
public final class BesidePages {

  private static final int MOST_CHOICES = 12;
  private static final int MOST_REASONS = 3;

  private final Door door;
  private final Tasks tasks;
  private final PicturePages pictures;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask for. */
  public record Tasks(
      Cataloguing cataloguing,
      Comparing comparing,
      Tracing tracing,
      Signing signing,
      Finding finding) {}

  public BesidePages(
      Door door, Tasks tasks, PicturePages pictures, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.pictures = pictures;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Where a setup is put beside others. */
  static String path(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/beside";
  }

  /** Shows {@code …/beside?with=ID}; without another to stand beside it, what may be chosen. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Optional<String> other = query(context, BesideChoicePage.WITH);
    if (other.isPresent()) {
      show(context, studio, id, other.get());
    } else {
      choose(context, studio, id);
    }
  }

  private static Optional<String> query(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).filter(text -> !text.isBlank());
  }

  private void show(Context context, StudioId studio, SetupId id, String with) {
    Comparing.Compared both = tasks.comparing().setups(door.caller(context), studio, id, with);
    SetupId other = both.to().setup();
    Wording words = layouts.words(context);
    BesideView view =
        new BesideView(
            one(context, studio, both.from(), words),
            one(context, studio, both.to(), words),
            words);
    templates.show(
        context,
        "beside",
        new BesidePage(
            layouts.named(
                context,
                studio,
                "pages.beside.of",
                both.from().document().title(),
                both.to().document().title()),
            column(context, studio, both.from(), words),
            column(context, studio, both.to(), words),
            view.groups(),
            view.lights(),
            view.overlay(),
            path(studio, id),
            with(path(studio, other), id)));
  }

  private BesideView.One one(Context context, StudioId studio, Comparing.Side side, Wording words) {
    return new BesideView.One(
        side.document(),
        SignatureView.part(
            tasks.signing().get(door.caller(context), studio, side.setup(), side.revision()),
            new LightNames(side.document(), words)));
  }

  private BesidePage.Column column(
      Context context, StudioId studio, Comparing.Side side, Wording words) {
    return new BesidePage.Column(
        side.document().title(),
        SetupPages.setupPath(studio, side.setup()),
        SetupView.placeAndDate(side.document(), words),
        pictures.part(door.caller(context), studio, side.setup(), words).finished());
  }

  private void choose(Context context, StudioId studio, SetupId id) {
    Caller caller = door.caller(context);
    Catalogued setup = tasks.cataloguing().get(caller, studio, id);
    String asked = query(context, BesideChoicePage.WORDS).orElse("");
    Wording words = layouts.words(context);
    String path = path(studio, id);
    templates.show(
        context,
        "besideChoice",
        new BesideChoicePage(
            layouts.named(context, studio, "pages.beside.chooseFor", setup.document().title()),
            setup.document().title(),
            SetupPages.setupPath(studio, id),
            path,
            asked,
            asked.isEmpty() ? kin(caller, studio, setup) : List.of(),
            found(caller, studio, id, asked).stream()
                .filter(found -> !found.setup().id().equals(id))
                .map(found -> choice(path, found, words))
                .toList()));
  }

  private List<Link> kin(Caller caller, StudioId studio, Catalogued setup) {
    String path = path(studio, setup.id());
    Tracing.Kin kin = tasks.tracing().kin(caller, studio, setup);
    return Stream.concat(
            setup.parent().filter(_ -> kin.hasParentStill()).stream()
                .map(parent -> new Link(parent.title(), with(path, parent.id()))),
            kin.children().stream().map(child -> new Link(child.title(), with(path, child.id()))))
        .toList();
  }

  private List<Finding.Found> found(Caller caller, StudioId studio, SetupId id, String asked) {
    Question question = Question.of(studio.text(), asked).withLimit(MOST_CHOICES);
    return tasks
        .finding()
        .find(
            caller,
            studio,
            asked.isEmpty()
                ? question.withLike(tasks.finding().likeThis(caller, studio, id.text()).like())
                : question)
        .items();
  }

  private static BesideChoicePage.Choice choice(String path, Finding.Found found, Wording words) {
    return new BesideChoicePage.Choice(
        found.setup().document().title(),
        with(path, found.setup().id()),
        SetupView.placeAndDate(found.setup().document(), words),
        words.say(found.reasons()).stream().limit(MOST_REASONS).collect(Collectors.joining("; ")));
  }

  private static String with(String path, SetupId other) {
    return Address.of(path).with(BesideChoicePage.WITH, other.text()).toString();
  }
}
