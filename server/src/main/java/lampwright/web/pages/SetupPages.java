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
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Once;
import lampwright.tasks.Proposing;
import lampwright.tasks.Recorded;
import lampwright.tasks.Recording;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Signing;
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
  private final Cataloguing cataloguing;
  private final Tracing tracing;
  private final Recording recording;
  private final Proposing proposing;
  private final Signing signing;
  private final KitKeeping kits;
  private final Templates templates;
  private final StudioLayouts layouts;
  private final LifePages life;
  private final PicturePages pictures;
  private final SharePages share;
  private final DrawnSetups drawings;

  public SetupPages(
      Door door,
      Cataloguing cataloguing,
      Tracing tracing,
      Recording recording,
      Proposing proposing,
      Signing signing,
      KitKeeping kits,
      Templates templates,
      StudioLayouts layouts,
      LifePages life,
      PicturePages pictures,
      SharePages share,
      DrawnSetups drawings) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.tracing = tracing;
    this.recording = recording;
    this.proposing = proposing;
    this.signing = signing;
    this.kits = kits;
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
    show(context, studio, cataloguing.get(door.caller(context), studio, id), Typed.nothing());
  }

  /** What somebody typed of what was really used, and what is wrong with it. */
  private record Typed(Optional<FormFields> fields, FormErrors errors) {

    static Typed nothing() {
      return new Typed(Optional.empty(), FormErrors.none());
    }
  }

  private void show(Context context, StudioId studio, Catalogued setup, Typed typed) {
    Caller caller = door.caller(context);
    Figures figures = FiguresComputation.of(setup.document());
    Recording.State state = recording.state(caller, studio, setup);
    Proposing.State proposed = proposing.state(caller, studio, setup.id());
    Layout layout = layouts.of(context, studio, setup.document().title());
    Wording words = layout.words();
    templates.show(
        context,
        "setup",
        new SetupView(setup.document(), figures, words)
            .page(
                layout,
                setup,
                new SetupView.Beside(
                    kin(studio, setup, tracing.kin(caller, studio, setup)),
                    SignatureView.part(
                        signing.get(caller, studio, setup.id()),
                        new LightNames(setup.document(), words)),
                    state.last().map(last -> UsedView.recorded(last, words)),
                    new ProposedView(setupPath(studio, setup.id()), setup.revision(), words)
                        .parts(proposed.waiting(), door.csrfToken(context)),
                    proposed.mayPropose()
                        ? Optional.of(
                            usedForm(context, studio, setup, figures, state, typed, words))
                        : Optional.empty(),
                    kitForm(caller, studio, setup.id()),
                    NowPages.form(
                        NowPages.path(studio, setup.id()),
                        setup.document(),
                        NowPages.names(kits, caller, studio),
                        words),
                    actions(studio, setup, state.mayRecord(), words),
                    pictures.part(caller, studio, setup.id(), words),
                    life.part(context, studio, setup, state.mayRecord()),
                    share.part(context, studio, setup.id(), words),
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
    Catalogued setup = cataloguing.get(caller, studio, id);
    Optional<Recorded> now = now(setup, recording.find(caller, studio, id));
    UsedFields fields =
        fields(setup, FiguresComputation.of(setup.document()), now, layouts.words(context));
    Reading<Used> read = fields.read(sent::get);
    try {
      Used used =
          switch (read) {
            case Reading.Sound<Used>(Used value) -> value;
            case Reading.Faulty<Used> faulty -> throw Refused.invalid(faulty.problems());
          };
      if (recording.state(caller, studio, setup).mayRecord()) {
        recording.record(caller, studio, id, revision(sent), used, Message.none());
      } else {
        proposing.propose(caller, studio, id, new Proposal(revision(sent), used), Once.unkeyed());
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
      show(context, studio, setup, new Typed(Optional.of(sent), errors));
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
    SetupDocument setup = cataloguing.get(door.caller(context), studio, id).document();
    Layout layout =
        layouts.of(context, studio, layouts.words(context).say("pages.figures.of", setup.title()));
    templates.show(
        context,
        "figures",
        new FiguresView(setup, FiguresComputation.of(setup), layout.words())
            .page(layout, setupPath(studio, id)));
  }

  private KitForm kitForm(Caller caller, StudioId studio, SetupId id) {
    return new KitForm(
        setupPath(studio, id) + "/adapted",
        kits.names(caller, studio).entrySet().stream()
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
