package lampwright.web.pages;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.drawing.StopRuler;
import lampwright.engine.unit.Stops;
import lampwright.setup.Ambient;
import lampwright.setup.Cautions;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.Occasion;
import lampwright.setup.Outcome.Judgement;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.tasks.Catalogued;

/** Puts a catalogued setup and its figures on the setup page. */
final class SetupView {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private final SetupDocument setup;
  private final Figures figures;
  private final Map<LightId, Integer> numbers;

  SetupView(SetupDocument setup, Figures figures) {
    this.setup = setup;
    this.figures = figures;
    this.numbers = numbers(setup);
  }

  /** Each light's number: its place in the build order, as on the plan. */
  static Map<LightId, Integer> numbers(SetupDocument setup) {
    return setup.numbersInBuildOrder();
  }

  /** What the page shows beside the setup itself. */
  record Beside(
      Kin kin,
      SignaturePart signature,
      Optional<UsedPart> used,
      Optional<UsedForm> usedForm,
      KitForm kits,
      List<Link> actions,
      PicturesPart pictures,
      LifePart life) {}

  SetupPage page(
      Layout layout, Catalogued from, Beside beside, String findPath, String figuresPath) {
    FiguresView all = new FiguresView(setup, figures);
    return new SetupPage(
        layout,
        setup.title(),
        placeAndDate(setup),
        setup.intent().orElse(""),
        beside.kin(),
        moods(setup, findPath),
        beside.pictures(),
        SetupFigures.strip(setup.exposure(), figures),
        Optional.of(PlanView.of(Plan.of(setup, figures), PlanTable.of(setup, figures))),
        beside.signature().withLike(Address.of(findPath).with("like", from.id().text()).toString()),
        lights(),
        beside.used(),
        beside.usedForm(),
        "Off the model",
        buildOrder(),
        figuresPath,
        all.dials(),
        all.lines(figuresPath),
        movement(),
        ambient(),
        ambientNote(),
        camera(),
        cameraNote(),
        Cautions.of(setup),
        outcome(),
        all.missing(),
        figures.leftOut(),
        beside.kits(),
        beside.life(),
        "Revision "
            + from.revision()
            + ", by "
            + from.changedBy()
            + ", "
            + DAY.format(from.changedAt().atZone(ZoneOffset.UTC)),
        beside.actions());
  }

  static List<Link> moods(SetupDocument setup, String findPath) {
    return setup.moods().stream()
        .map(mood -> new Link(mood, Address.of(findPath).with("mood", mood).toString()))
        .toList();
  }

  /** Where and when, as one line; empty where neither is said. */
  static String placeAndDate(SetupDocument setup) {
    Optional<Occasion> occasion = setup.occasion();
    Stream<String> parts =
        Stream.of(
                occasion.flatMap(Occasion::place).map(SetupView::place),
                occasion.flatMap(Occasion::date).map(SetupView::day),
                occasion.flatMap(Occasion::time).map(Object::toString),
                occasion.flatMap(Occasion::weather))
            .flatMap(Optional::stream);
    return parts.collect(Collectors.joining(" · "));
  }

  private static String place(Occasion.Place place) {
    return place.kind().map(kind -> place.name() + ", " + kind).orElse(place.name());
  }

  private static String day(LocalDate date) {
    return DAY.format(date);
  }

  private List<SetupLight> lights() {
    return setup.lightsInBuildOrder().stream()
        .map(light -> light(figures.get(light.id())))
        .toList();
  }

  private SetupLight light(LightFigures of) {
    Light light = of.light();
    String role = Wording.role(light.role());
    Optional<Level> level = of.level();
    return new SetupLight(
        number(light.id()),
        role,
        Wording.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        Wording.power(light.head(), light.stopsDown()),
        level.map(l -> l.reading().tenthsText()).orElse("–"),
        level.map(l -> Wording.known(l.known())).orElse(Known.ESTIMATED),
        ruler(role, level).svg(),
        level.map(l -> Wording.signed(l.fromShooting())).orElse("not known"),
        level.map(l -> Wording.giveOrTake(l.uncertainty())).orElse(""),
        of.computedMinusMetered().map(Stops::negated).map(d -> Deviation.ofTenths(d.value())),
        light.reason().orElse(""),
        level.map(SetupView::workings).orElse(List.of()));
  }

  private static List<WorkingStep> workings(Level level) {
    return List.of(Wording.working(level.working()), Wording.working(level.budget().working()));
  }

  static StopRuler ruler(String what, Optional<Level> level) {
    StopRuler ruler = StopRuler.of(what);
    if (level.isEmpty()) {
      return ruler;
    }
    return ruler
        .withDot(level.get().fromShooting().value())
        .withBand(level.get().uncertainty().value());
  }

  private int number(LightId id) {
    return numbers.getOrDefault(id, 0);
  }

  private List<BuildStep> buildOrder() {
    List<BuildStep> steps = new ArrayList<>();
    for (lampwright.setup.BuildStep step : setup.buildOrder()) {
      steps.add(
          step.light()
              .map(id -> lightStep(figures.get(id), step.what()))
              .orElseGet(() -> new BuildStep(0, step.what().orElse(""), "", "", List.of())));
    }
    return steps;
  }

  private BuildStep lightStep(LightFigures of, Optional<String> what) {
    Light light = of.light();
    String act =
        Wording.role(light.role())
            + ": "
            + light.head().name()
            + light.modifier().map(m -> ", " + m.name()).orElse("")
            + light
                .stopsDown()
                .map(down -> ", at " + Wording.power(light.head(), Optional.of(down)))
                .orElse("");
    return new BuildStep(
        number(light.id()),
        act,
        what.or(light::reason).orElse(""),
        of.level().map(level -> expected(light, level)).orElse(""),
        List.of());
  }

  /** The light alone; and with the ambient, where the meter was read so. */
  private static String expected(Light light, Level level) {
    String alone = level.reading().tenthsText() + " " + light.target().where();
    return light
        .reading()
        .filter(MeterReading::includesAmbient)
        .map(with -> alone + ", " + with.fNumber().tenthsText() + " with the ambient")
        .orElse(alone);
  }

  private List<SetupPage.Mark> movement() {
    List<SetupPage.Mark> marks = new ArrayList<>();
    for (Subject subject : setup.subjects()) {
      String measures =
          Stream.of(
                  subject.height().map(height -> Wording.metres(height) + " tall"),
                  subject.speedMPerS().map(v -> String.format(Locale.ROOT, "%.1f m/s", v)))
              .flatMap(Optional::stream)
              .collect(Collectors.joining(", "));
      marks.add(new SetupPage.Mark(subject.name(), measures));
      for (Subject.Mark mark : subject.path()) {
        marks.add(new SetupPage.Mark(mark.name(), mark.cue().orElse("")));
      }
    }
    return marks;
  }

  private List<Figure> ambient() {
    List<Figure> shown = new ArrayList<>();
    figures
        .ambient()
        .ifPresent(
            a -> {
              shown.add(
                  Figure.of(Wording.level(a.ambient().level()), "EV", "at ISO 100")
                      .with(Wording.known(a.ambient().known())));
              shown.add(
                  Figure.of(Wording.signed(a.offset()), "stops", "from the shooting exposure")
                      .giveOrTake(a.uncertainty())
                      .with(Wording.working(a.working())));
            });
    return shown;
  }

  private String ambientNote() {
    Optional<Ambient> ambient = setup.ambient();
    return Stream.of(
            ambient.flatMap(Ambient::source).map(s -> Wording.sentence(s.name())),
            ambient.flatMap(Ambient::how),
            ambient
                .flatMap(Ambient::temperature)
                .map(k -> String.format(Locale.ROOT, "%.0f K", k.value())))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" · "));
  }

  private List<Figure> camera() {
    List<Figure> shown = new ArrayList<>();
    setup
        .camera()
        .flatMap(lampwright.setup.Camera::focusDistance)
        .ifPresent(focus -> shown.add(Figure.of(Wording.metres(focus), "", "focus distance")));
    setup
        .camera()
        .flatMap(lampwright.setup.Camera::bearing)
        .ifPresent(
            bearing ->
                shown.add(
                    Figure.of(
                        String.format(Locale.ROOT, "%.0f°", bearing.value()), "", "looks toward")));
    return shown;
  }

  private String cameraNote() {
    return setup.camera().stream()
        .flatMap(
            camera ->
                Stream.of(
                        camera.body().map(lampwright.gear.Body::name),
                        camera.lens().map(lampwright.gear.Lens::name),
                        camera.place().map(p -> "lens " + Wording.metres(p.z()) + " up"))
                    .flatMap(Optional::stream))
        .collect(Collectors.joining(" · "));
  }

  private Outcome outcome() {
    return new Outcome(
        judged(Judgement.WORKED),
        judged(Judgement.MISTAKE),
        judged(Judgement.MISTAKE_KEPT),
        Stream.concat(judged(Judgement.RETOUCHED).stream(), setup.retouchNotes().stream()).toList(),
        judged(Judgement.DO_DIFFERENTLY));
  }

  private List<String> judged(Judgement judgement) {
    return setup.outcome().stream()
        .filter(outcome -> outcome.judgement() == judgement)
        .map(lampwright.setup.Outcome::text)
        .toList();
  }
}
