package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.drawing.StopRuler;
import lampwright.setup.Ambient;
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
import lampwright.wording.CautionLine;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.LightRow;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts a catalogued setup and its figures on the setup page. */
final class SetupView {

  private final SetupDocument setup;
  private final Figures figures;
  private final Wording words;
  private final Map<LightId, Integer> numbers;

  SetupView(SetupDocument setup, Figures figures, Wording words) {
    this.setup = setup;
    this.figures = figures;
    this.words = words;
    this.numbers = setup.numbersInBuildOrder();
  }

  /** What the page shows beside the setup itself, and where its drawings are kept. */
  record Beside(
      Kin kin,
      SignaturePart signature,
      Optional<UsedPart> used,
      List<ProposedPart> proposed,
      Optional<UsedForm> usedForm,
      KitForm kits,
      NowForm now,
      List<Link> actions,
      PicturesPart pictures,
      LifePart life,
      Optional<SharePart> share,
      DrawnSetups drawings) {}

  SetupPage page(
      Layout layout, Catalogued from, Beside beside, String findPath, String figuresPath) {
    FiguresView all = new FiguresView(setup, figures, words);
    return new SetupPage(
        layout,
        setup.title(),
        placeAndDate(setup, words),
        setup.intent().orElse(""),
        beside.kin(),
        moods(setup, findPath),
        beside.pictures(),
        KeyFigures.of(setup, figures, words.notation()),
        Optional.of(beside.drawings().sheet(setup, figures, words.notation())),
        beside.signature().withLike(Address.of(findPath).with("like", from.id().text()).toString()),
        lights(),
        beside.used(),
        beside.proposed(),
        beside.usedForm(),
        words.say("pages.setup.offModel"),
        buildOrder(),
        figuresPath,
        all.dials(),
        all.lines(figuresPath),
        movement(),
        ambient(),
        ambientNote(),
        camera(),
        cameraNote(setup, words),
        CautionLine.all(setup, words),
        outcome(),
        all.missing(),
        words.say(figures.leftOut()),
        beside.kits(),
        beside.now(),
        beside.life(),
        beside.share(),
        words.say(
            "pages.setup.revision",
            from.revision(),
            new WhoWords(words).by(from.changedBy()),
            new DayWords(words).day(from.changedAt().atZone(ZoneOffset.UTC).toLocalDate())),
        beside.actions());
  }

  static List<Link> moods(SetupDocument setup, String findPath) {
    return setup.moods().stream()
        .map(mood -> new Link(mood, Address.of(findPath).with("mood", mood).toString()))
        .toList();
  }

  /** Where and when, as one line; empty where neither is said. */
  static String placeAndDate(SetupDocument setup, Wording words) {
    Optional<Occasion> occasion = setup.occasion();
    Stream<String> parts =
        Stream.of(
                occasion.flatMap(Occasion::place).map(SetupView::place),
                occasion.flatMap(Occasion::date).map(new DayWords(words)::day),
                occasion.flatMap(Occasion::time).map(Object::toString),
                occasion.flatMap(Occasion::weather))
            .flatMap(Optional::stream);
    return parts.collect(Collectors.joining(" · "));
  }

  private static String place(Occasion.Place place) {
    return place.kind().map(kind -> place.name() + ", " + kind).orElse(place.name());
  }

  List<SetupLight> lights() {
    return LightRow.all(setup, figures, words.notation()).stream().map(this::light).toList();
  }

  private SetupLight light(LightRow row) {
    StopRuler ruler = StopRuler.of(row.role(), words.notation());
    return new SetupLight(
        row,
        row.onRuler()
            .map(at -> ruler.withDot(at.fromShooting().value()).withBand(at.uncertainty().value()))
            .orElse(ruler)
            .svg());
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
    String made = words.gear(1, light.head(), light.modifier(), List.of());
    String act =
        light
            .stopsDown()
            .map(
                down ->
                    words.say(
                        "pages.setup.lightAct",
                        words.role(light.role()),
                        made,
                        words.power(light.head(), Optional.of(down))))
            .orElseGet(() -> words.role(light.role()) + ": " + made);
    return new BuildStep(
        number(light.id()),
        act,
        what.or(light::reason).orElse(""),
        of.level().map(level -> expected(light, level)).orElse(""),
        List.of());
  }

  /** The light alone; and with the ambient, where the meter was read so. */
  private String expected(Light light, Level level) {
    String alone = words.reading(level.reading()) + " " + words.where(light.target());
    return light
        .reading()
        .filter(MeterReading::includesAmbient)
        .map(with -> words.say("pages.setup.withAmbient", alone, words.reading(with.fNumber())))
        .orElse(alone);
  }

  private List<SetupPage.Mark> movement() {
    List<SetupPage.Mark> marks = new ArrayList<>();
    for (Subject subject : setup.subjects()) {
      String measures =
          Stream.of(
                  subject
                      .height()
                      .map(height -> words.say("pages.setup.tall", words.length(height))),
                  subject.speedMPerS().map(v -> words.fixed(v, 1) + " m/s"))
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
                  Figure.of(
                          words.level(a.ambient().level()),
                          words.say("pages.unit.ev"),
                          words.say("pages.setup.atIso"))
                      .with(a.ambient().known()));
              shown.add(
                  Figure.of(
                          words.signed(a.offset()),
                          words.stopsUnit(),
                          words.say("pages.setup.fromShooting"))
                      .giveOrTake(words.giveOrTake(a.uncertainty()))
                      .with(WorkingStep.of(a.working(), words)));
            });
    return shown;
  }

  private String ambientNote() {
    Optional<Ambient> ambient = setup.ambient();
    return Stream.of(
            ambient
                .flatMap(Ambient::source)
                .map(s -> words.say("wording.source." + Wording.key(s))),
            ambient.flatMap(Ambient::how),
            ambient.flatMap(Ambient::temperature).map(k -> words.fixed(k.value(), 0) + " K"))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" · "));
  }

  List<Figure> camera() {
    List<Figure> shown = new ArrayList<>();
    setup
        .camera()
        .flatMap(lampwright.setup.Camera::focusDistance)
        .ifPresent(
            focus ->
                shown.add(
                    Figure.of(words.length(focus), "", words.say("pages.setup.focusDistance"))));
    setup
        .camera()
        .flatMap(lampwright.setup.Camera::bearing)
        .ifPresent(
            bearing ->
                shown.add(
                    Figure.of(
                        words.fixed(bearing.value(), 0) + "°",
                        "",
                        words.say("pages.setup.looksToward"))));
    return shown;
  }

  /** Body, lens and how high it stands; empty where none is said. */
  static String cameraNote(SetupDocument setup, Wording words) {
    return setup.camera().stream()
        .flatMap(
            camera ->
                Stream.of(
                        camera.body().map(lampwright.gear.Body::name),
                        camera.lens().map(lampwright.gear.Lens::name),
                        camera
                            .place()
                            .map(p -> words.say("pages.setup.lensUp", words.length(p.z()))))
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
