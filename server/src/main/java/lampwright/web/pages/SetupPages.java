package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.people.StudioId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Used;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.used.Proposal;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Once;
import lampwright.tasks.Opening;
import lampwright.tasks.Proposing;
import lampwright.tasks.Recorded;
import lampwright.tasks.Recording;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Tracing;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** The page of one setup, and of all its figures. */
public final class SetupPages {

  private static final String USED = "/used";

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;
  private final LifePages life;
  private final PicturePages pictures;
  private final SharePages share;
  private final DrawnSetups drawings;

  /** What these pages ask for. */
  public record Tasks(
      Opening opening, Cataloguing cataloguing, Recording recording, Proposing proposing) {}

  public SetupPages(
      Door door,
      Tasks tasks,
      Templates templates,
      StudioLayouts layouts,
      LifePages life,
      PicturePages pictures,
      SharePages share,
      DrawnSetups drawings) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
    this.life = life;
    this.pictures = pictures;
    this.share = share;
    this.drawings = drawings;
  }

  /** Shows a setup: {@code /studios/{studio}/setups/{setup}}. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    show(context, studio, id, Typed.nothing());
  }

  /** What somebody typed of what was really used, and what is wrong with it. */
  private record Typed(Optional<FormFields> fields, FormErrors errors) {

    static Typed nothing() {
      return new Typed(Optional.empty(), FormErrors.none());
    }
  }

  private void show(Context context, StudioId studio, SetupId id, Typed typed) {
    Opening.Opened opened = tasks.opening().open(door.caller(context), studio, id);
    Catalogued setup = opened.setup();
    Figures figures = FiguresComputation.of(setup.document());
    Recording.State state = opened.used();
    Proposing.State proposed = opened.proposed();
    Layout layout = layouts.of(context, studio, setup.document().title(), opened.memberships());
    Wording words = layout.words();
    templates.show(
        context,
        "setup",
        new SetupView(setup.document(), figures, words)
            .page(
                layout,
                setup,
                new SetupView.Beside(
                    kin(studio, setup, opened.kin()),
                    SignatureView.part(opened.signature(), new LightNames(setup.document(), words)),
                    state.last().map(last -> UsedView.recorded(last, words)),
                    new ProposedView(setupPath(studio, setup.id()), setup.revision(), words)
                        .parts(proposed.waiting(), door.csrfToken(context)),
                    proposed.mayPropose()
                        ? Optional.of(
                            usedForm(context, studio, setup, figures, state, typed, words))
                        : Optional.empty(),
                    kitForm(studio, opened),
                    NowPages.form(
                        NowPages.path(studio, setup.id()),
                        setup.document(),
                        NowPages.names(opened.kits()),
                        words),
                    actions(studio, setup, state.mayRecord(), words),
                    pictures.part(studio, setup.id(), opened.pictures(), words),
                    life.part(context, studio, opened),
                    share.part(context, studio, opened, words),
                    drawings),
                findPath(studio),
                setupPath(studio, setup.id()) + "/figures"));
  }

  private static List<Link> actions(
      StudioId studio, Catalogued setup, boolean mayWrite, Wording words) {
    List<Link> actions = new ArrayList<>();
    if (mayWrite) {
      actions.add(
          new Link(words.say("editor.way.change"), setupPath(studio, setup.id()) + "/edit"));
      actions.add(
          new Link(words.say("editor.way.another"), findPath(studio) + "/new?from=" + setup.id()));
      actions.add(
          new Link(
              words.say("studio.archive.one"),
              "/api" + setupPath(studio, setup.id()) + "/archive"));
    }
    actions.add(new Link(words.say("field.way"), setupPath(studio, setup.id()) + FieldPages.FIELD));
    actions.add(new Link(words.say("without.way"), WithoutPages.path(studio, setup.id())));
    actions.add(new Link(words.say("packing.way"), PackPages.forSetup(studio, setup.id())));
    actions.add(
        new Link(words.say("sheet.kind"), setupPath(studio, setup.id()) + SheetPages.SHEET));
    actions.add(new Link(words.say("pages.beside.way"), BesidePages.path(studio, setup.id())));
    actions.add(
        new Link(words.say("pages.common.pictures"), PicturePages.path(studio, setup.id())));
    actions.add(
        new Link(words.say("pages.takes.andNotes"), TakePages.takesPath(studio, setup.id())));
    setup
        .document()
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(Occasion.Place::location)
        .ifPresent(
            location ->
                actions.add(
                    new Link(
                        words.say("pages.setup.location"),
                        LocationPages.path(studio) + "/" + location)));
    return actions;
  }

  private static Kin kin(StudioId studio, Catalogued setup, Tracing.Kin kin) {
    return new Kin(
        setup
            .parent()
            .map(
                parent ->
                    new Link(
                        parent.title(),
                        kin.hasParentStill() ? setupPath(studio, parent.id()) : "")),
        kin.children().stream()
            .map(child -> new Link(child.title(), setupPath(studio, child.id())))
            .toList());
  }

  private UsedForm usedForm(
      Context context,
      StudioId studio,
      Catalogued setup,
      Figures figures,
      Recording.State state,
      Typed typed,
      Wording words) {
    String action = setupPath(studio, setup.id()) + USED;
    Optional<Recorded> now = now(setup, state.last());
    UsedFields fields = fields(setup, figures, now, words);
    if (typed.fields().isEmpty()) {
      String note = now.map(Recorded::note).orElse("");
      return fields
          .form(action, door.csrfToken(context), setup.revision(), note)
          .proposing(!state.mayRecord());
    }
    FormFields sent = typed.fields().get();
    return fields
        .form(
            action,
            door.csrfToken(context),
            setup.revision(),
            sent.get(UsedForm.NOTE),
            sent::get,
            typed.errors())
        .proposing(!state.mayRecord());
  }

  /** What was told last, where that is what the setup says now. */
  private static Optional<Recorded> now(Catalogued setup, Optional<Recorded> last) {
    return last.filter(of -> of.revision() == setup.revision());
  }

  private static UsedFields fields(
      Catalogued setup, Figures figures, Optional<Recorded> now, Wording words) {
    return new UsedFields(
        setup.document(),
        now.map(of -> FiguresComputation.of(of.planned())).orElse(figures),
        now.isPresent(),
        words);
  }

  /** Whoever comes to the form's own address is led to the form. */
  public void showUsed(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    context.redirect(setupPath(studio, id) + "#used", HttpStatus.SEE_OTHER);
  }

  /**
   * Takes what was really used, or proposed by the crew: a form to {@code
   * /studios/{studio}/setups/{setup}/used}.
   */
  public void recordUsed(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    Caller caller = door.caller(context);
    Catalogued setup = tasks.cataloguing().get(caller, studio, id);
    Optional<Recorded> now = now(setup, tasks.recording().find(caller, studio, id));
    UsedFields fields =
        fields(setup, FiguresComputation.of(setup.document()), now, layouts.words(context));
    Reading<Used> read = fields.read(sent::get);
    try {
      Used used =
          switch (read) {
            case Reading.Sound<Used>(Used value) -> value;
            case Reading.Faulty<Used> faulty -> throw Refused.invalid(faulty.problems());
          };
      if (tasks.recording().state(caller, studio, setup).mayRecord()) {
        tasks.recording().record(caller, studio, id, revision(sent), used, Message.none());
      } else {
        tasks
            .proposing()
            .propose(caller, studio, id, new Proposal(revision(sent), used), Once.unkeyed());
      }
      context.redirect(setupPath(studio, id) + "#used", HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      FormErrors errors =
          switch (refused.refusal()) {
            case Refusal.Invalid(List<Problem> problems) -> fields.errors(problems, sent::get);
            case Refusal.Stale stale ->
                new FormErrors(
                    List.of(
                        new FormErrors.FormError(
                            "", layouts.words(context).say("pages.setup.changedSince"))));
            default -> throw refused;
          };
      context.status(
          refused.refusal() instanceof Refusal.Stale
              ? HttpStatus.PRECONDITION_FAILED
              : HttpStatus.UNPROCESSABLE_CONTENT);
      show(context, studio, id, new Typed(Optional.of(sent), errors));
    }
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  static int revision(FormFields sent) {
    String written = sent.get(UsedForm.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }

  /** Shows all its figures: {@code /studios/{studio}/setups/{setup}/figures}. */
  public void figures(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    SetupDocument setup = tasks.cataloguing().get(door.caller(context), studio, id).document();
    Layout layout =
        layouts.of(context, studio, layouts.words(context).say("pages.figures.of", setup.title()));
    templates.show(
        context,
        "figures",
        new FiguresView(setup, FiguresComputation.of(setup), layout.words())
            .page(layout, setupPath(studio, id)));
  }

  private static KitForm kitForm(StudioId studio, Opening.Opened opened) {
    return new KitForm(
        setupPath(studio, opened.setup().id()) + "/adapted",
        opened.kits().entrySet().stream()
            .map(kit -> new KitForm.Choice(kit.getKey().text(), kit.getValue(), false))
            .toList(),
        "");
  }

  static String findPath(StudioId studio) {
    return "/studios/" + studio.text() + "/setups";
  }

  static String setupPath(StudioId studio, SetupId id) {
    return findPath(studio) + "/" + id.text();
  }
}
