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
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Recorded;
import lampwright.tasks.Recording;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Signing;
import lampwright.tasks.Tracing;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/** The page of one setup, and of all its figures. */
public final class SetupPages {

  private static final String USED = "/used";
  private static final FormErrors CHANGED_SINCE =
      new FormErrors(
          List.of(
              new FormErrors.FormError(
                  "",
                  "Somebody changed this setup since you opened it. What you typed still stands"
                      + " below; look at what is new, then keep it.")));

  private final Door door;
  private final Cataloguing cataloguing;
  private final Tracing tracing;
  private final Recording recording;
  private final Signing signing;
  private final KitKeeping kits;
  private final Templates templates;
  private final StudioLayouts layouts;
  private final LifePages life;
  private final PicturePages pictures;

  public SetupPages(
      Door door,
      Cataloguing cataloguing,
      Tracing tracing,
      Recording recording,
      Signing signing,
      KitKeeping kits,
      Templates templates,
      StudioLayouts layouts,
      LifePages life,
      PicturePages pictures) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.tracing = tracing;
    this.recording = recording;
    this.signing = signing;
    this.kits = kits;
    this.templates = templates;
    this.layouts = layouts;
    this.life = life;
    this.pictures = pictures;
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
    templates.show(
        context,
        "setup",
        new SetupView(setup.document(), figures)
            .page(
                layouts.of(context, studio, setup.document().title()),
                setup,
                new SetupView.Beside(
                    kin(studio, setup, tracing.kin(caller, studio, setup)),
                    SignatureView.part(signing.get(caller, studio, setup.id())),
                    state.last().map(last -> new UsedView(last).part()),
                    state.mayRecord()
                        ? Optional.of(
                            usedForm(context, studio, setup, figures, state.last(), typed))
                        : Optional.empty(),
                    kitForm(caller, studio, setup.id(), ""),
                    actions(studio, setup),
                    pictures.part(caller, studio, setup.id()),
                    life.part(context, studio, setup, state.mayRecord())),
                findPath(studio),
                setupPath(studio, setup.id()) + "/figures"));
  }

  private static List<Link> actions(StudioId studio, Catalogued setup) {
    List<Link> actions = new ArrayList<>();
    actions.add(new Link("Pictures", PicturePages.path(studio, setup.id())));
    actions.add(new Link("Takes and notes", TakePages.takesPath(studio, setup.id())));
    setup
        .document()
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(Occasion.Place::location)
        .ifPresent(
            location ->
                actions.add(new Link("The location", LocationPages.path(studio) + "/" + location)));
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
      Optional<Recorded> last,
      Typed typed) {
    String action = setupPath(studio, setup.id()) + USED;
    Optional<Recorded> now = now(setup, last);
    UsedFields fields = fields(setup, figures, now);
    if (typed.fields().isEmpty()) {
      String note = now.map(Recorded::note).orElse("");
      return fields.form(action, door.csrfToken(context), setup.revision(), note);
    }
    FormFields sent = typed.fields().get();
    return fields.form(
        action,
        door.csrfToken(context),
        setup.revision(),
        sent.get(UsedForm.NOTE),
        sent::get,
        typed.errors());
  }

  /** What was told last, where that is what the setup says now. */
  private static Optional<Recorded> now(Catalogued setup, Optional<Recorded> last) {
    return last.filter(of -> of.revision() == setup.revision());
  }

  private static UsedFields fields(Catalogued setup, Figures figures, Optional<Recorded> now) {
    return new UsedFields(
        setup.document(),
        now.map(of -> FiguresComputation.of(of.planned())).orElse(figures),
        now.isPresent());
  }

  /** Whoever comes to the form's own address is led to the form. */
  public void showUsed(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    context.redirect(setupPath(studio, id) + "#used", HttpStatus.SEE_OTHER);
  }

  /** Takes what was really used: a form to {@code /studios/{studio}/setups/{setup}/used}. */
  public void recordUsed(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    Caller caller = door.caller(context);
    Catalogued setup = cataloguing.get(caller, studio, id);
    Optional<Recorded> now = now(setup, recording.find(caller, studio, id));
    UsedFields fields = fields(setup, FiguresComputation.of(setup.document()), now);
    Reading<Used> read = fields.read(sent::get);
    try {
      Used used =
          switch (read) {
            case Reading.Sound<Used>(Used value) -> value;
            case Reading.Faulty<Used> faulty -> throw Refused.invalid(faulty.problems());
          };
      recording.record(caller, studio, id, revision(sent), used, Message.none());
      context.redirect(setupPath(studio, id) + "#used", HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      FormErrors errors =
          switch (refused.refusal()) {
            case Refusal.Invalid(List<Problem> problems) -> fields.errors(problems, sent::get);
            case Refusal.Stale stale -> CHANGED_SINCE;
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
  private static int revision(FormFields sent) {
    String written = sent.get(UsedForm.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }

  /** Shows all its figures: {@code /studios/{studio}/setups/{setup}/figures}. */
  public void figures(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    SetupDocument setup = cataloguing.get(door.caller(context), studio, id).document();
    templates.show(
        context,
        "figures",
        new FiguresView(setup, FiguresComputation.of(setup))
            .page(
                layouts.of(context, studio, "Figures of " + setup.title()), setupPath(studio, id)));
  }

  private KitForm kitForm(Caller caller, StudioId studio, SetupId id, String chosen) {
    List<KeptKit> all = kits.list(caller, studio);
    return new KitForm(
        setupPath(studio, id) + "/adapted",
        all.stream()
            .map(
                kit ->
                    new KitForm.Choice(
                        kit.id().text(), kit.document().name(), kit.id().text().equals(chosen)))
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
