package lampwright.web.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.drawing.Plan;
import lampwright.drawing.StepPlace;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.FromHitMark;
import lampwright.setup.building.WalkedMark;
import lampwright.setup.figures.Figures;
import lampwright.wording.CautionLine;
import lampwright.wording.Wording;

/** Puts a setup on the page that a phone has on location. */
final class FieldView {

  private final SetupDocument setup;
  private final Figures figures;
  private final Wording words;
  private final Map<LightId, Integer> numbers;
  private final SheetPlaces places;

  FieldView(SetupDocument setup, Figures figures, Wording words) {
    this.setup = setup;
    this.figures = figures;
    this.words = words;
    this.numbers = setup.numbersInBuildOrder();
    this.places = new SheetPlaces(setup, words);
  }

  /**
   * What stands around it.
   *
   * @param path of the setup's page
   * @param data see {@link FieldPage#data}
   */
  record Around(
      Layout layout, String path, String listPath, String data, boolean mayLog, NowForm now) {}

  FieldPage page(Around around) {
    String path = around.path();
    return new FieldPage(
        around.layout(),
        setup.title(),
        path,
        path + SheetPages.SHEET,
        around.listPath(),
        SetupView.placeAndDate(setup, words),
        around.data(),
        Plan.of(setup, figures, words.notation()),
        new BuildSteps(setup, figures, numbers, words)
            .all(BuildSteps.ALL_WORDS).stream().map(this::step).toList(),
        words.say(
            setup.camera().flatMap(Camera::bearing).isPresent()
                ? "sheet.bearings.true"
                : "sheet.bearings.camera"),
        marks(),
        focus(),
        around.mayLog()
            ? Optional.of(
                new FieldPage.Day(
                    path + "/takes",
                    TakeReason.choices(true, _ -> "", words),
                    TakeReason.choices(false, _ -> "", words)))
            : Optional.empty(),
        around.now(),
        setup.lightsInBuildOrder().stream().map(this::mover).toList());
  }

  private FieldPage.Step step(SheetPage.Step step) {
    Optional<Light> light = step.light().map(of -> figures.get(new LightId(of.id())).light());
    return new FieldPage.Step(
        step.what(),
        step.light(),
        light.map(of -> new StepPlace(setup, numbers, words.notation()).of(of, before(of))),
        light.map(of -> MeterField.of(figures.get(of.id()), "", _ -> "", words)),
        light.map(of -> CautionLine.ofLight(setup, of, words)).orElse(List.of()));
  }

  /** What stands by the time that a light is set. */
  private List<Light> before(Light light) {
    return setup.lightsInBuildOrder().stream()
        .takeWhile(other -> !other.id().equals(light.id()))
        .toList();
  }

  private List<FieldPage.Mark> marks() {
    List<WalkedMark> walk = WalkedMark.of(setup, figures);
    return IntStream.range(0, walk.size()).mapToObj(i -> mark(walk.get(i), i)).toList();
  }

  private FieldPage.Mark mark(WalkedMark of, int number) {
    return new FieldPage.Mark(
        of.subject(),
        of.mark().name(),
        places.whole(of.mark().at()),
        of.mark().cue().orElse(""),
        of.station()
            .focus()
            .map(focus -> words.say(focus.isSharp() ? "field.walk.sharp" : "field.walk.blurred"))
            .orElse(""),
        new MeterField(
            "mark-" + number,
            "mark-" + number,
            "mark-tenths-" + number,
            of.mark().name(),
            of.expected().map(words::reading).orElse(""),
            "",
            ""));
  }

  /** "12.01 m, on the mark, 0.75 m up"; empty where the camera's focus is not told. */
  private String focus() {
    Optional<Camera> camera = setup.camera();
    return camera
        .flatMap(Camera::focusDistance)
        .map(
            distance ->
                words.notation().tape(distance)
                    + camera
                        .flatMap(Camera::aim)
                        .map(
                            aim ->
                                ", "
                                    + words.say(
                                        "sheet.placeUp",
                                        places.whole(aim),
                                        words.notation().tape(aim.z())))
                        .orElse(""))
        .orElse("");
  }

  private FieldPage.Mover mover(Light light) {
    return new FieldPage.Mover(
        light.id().text(),
        words.light(numbers.getOrDefault(light.id(), 0), light),
        places.direction(light.place()).replace("°", ""),
        words.notation().tape(FromHitMark.of(light.place(), setup).overGround()),
        words.notation().tape(light.place().z()));
  }
}
