package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.BuildUp;
import lampwright.setup.figures.Figures;
import lampwright.setup.without.LightByLight;
import lampwright.wording.TurningWords;
import lampwright.wording.Wording;

/** Shows a setup growing from the ambient, a light at a time. */
final class WithoutStages {

  private final LightByLight lights;
  private final SetupDocument setup;
  private final Figures figures;
  private final Wording words;
  private final Map<LightId, Integer> numbers;

  WithoutStages(LightByLight lights, Figures figures, Wording words) {
    this.lights = lights;
    this.setup = lights.setup();
    this.figures = figures;
    this.words = words;
    this.numbers = setup.numbersInBuildOrder();
  }

  /** What came: "2 Rim is added". */
  String name(LightByLight.Stage stage) {
    if (stage.came().isEmpty()) {
      return words.say("without.stage.ambient");
    }
    boolean isFirst = stage.equals(lights.stages().getFirst());
    return words.say(
        isFirst ? "without.stage.first" : "without.stage.adds", name(stage.came().get()));
  }

  private String name(LightId id) {
    return words.light(numbers.getOrDefault(id, 0), figures.get(id).light());
  }

  /**
   * The way through the stages.
   *
   * @param path of the page
   * @param at which stage is shown, from 1, where one is
   */
  WithoutPage.Stages part(String path, Optional<Integer> at) {
    return new WithoutPage.Stages(
        new Link(
            words.say(
                setup.ambient().isPresent() ? "without.stage.begin" : "without.stage.beginFirst"),
            WithoutPages.stagePath(path, 1)),
        at.map(stage -> stage(path, stage)));
  }

  private WithoutPage.Stage stage(String path, int at) {
    LightByLight.Stage stage = lights.stages().get(at - 1);
    int of = lights.stages().size();
    List<String> lines = new ArrayList<>();
    stage.came().flatMap(this::metered).ifPresent(lines::add);
    lines.addAll(new TurningWords(lights, words).came(stage));
    if (at == of) {
      lines.add(words.say("without.stage.end"));
    }
    return new WithoutPage.Stage(
        words.say("without.stage", at, of),
        stage.came().flatMap(id -> figures.get(id).light().reason()).orElse(""),
        lines,
        at > 1 ? WithoutPages.stagePath(path, at - 1) : "",
        at < of ? WithoutPages.stagePath(path, at + 1) : "");
  }

  /** What the meter gives whoever builds: the guided build's own figures. */
  private Optional<String> metered(LightId id) {
    return BuildUp.of(setup, figures).stream()
        .filter(step -> step.light().light().id().equals(id))
        .findFirst()
        .flatMap(this::metered);
  }

  private Optional<String> metered(BuildUp.Step step) {
    Light light = step.light().light();
    return step.light()
        .level()
        .flatMap(
            alone ->
                step.together()
                    .map(
                        together ->
                            words.say(
                                "without.stage.meter",
                                words.where(light.target()),
                                words.reading(alone.reading()),
                                words.reading(together.reading()))));
  }
}
