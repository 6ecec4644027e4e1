package lampwright.setup.building;

import static lampwright.setup.building.LitForTests.light;
import static lampwright.setup.building.LitForTests.setup;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import org.junit.jupiter.api.Test;

/** What the meter gives while lights are added one after another. */
class BuildUpTest {

  private static List<Double> together(SetupDocument setup) {
    return BuildUp.of(setup, FiguresComputation.of(setup)).stream()
        .map(step -> step.together().orElseThrow().reading().value())
        .toList();
  }

  /** Two equal lights are one stop more than one, four are two: common practice, no source. */
  @Test
  void equalLightsAddAStopEachTimeTheirNumberDoubles() {
    List<Double> readings =
        together(
            setup(
                Map.of(),
                light("one", 2, -2, "toward_camera", 4),
                light("two", -2, -2, "toward_camera", 4),
                light("three", 2, -3, "toward_camera", 4),
                light("four", -2, -3, "toward_camera", 4)));
    assertEquals(4, readings.get(0), 1e-9);
    assertEquals(4 * Math.sqrt(2), readings.get(1), 1e-9);
    assertEquals(8, readings.get(3), 1e-9);
  }

  /** The cosine law: at 60 degrees from where the meter points, half counts. */
  @Test
  void theMeterStaysOnTheLightAndTakesTheOthersByTheirAngle() {
    double sixty = Math.toRadians(60);
    List<Double> readings =
        together(
            setup(
                Map.of(),
                light("side", 3 * Math.sin(sixty), -3 * Math.cos(sixty), "toward_light", 8),
                light("front", 0, -3, "toward_light", 8)));
    assertEquals(8, readings.get(0), 1e-9);
    assertEquals(8 * Math.sqrt(1.5), readings.get(1), 1e-9);
  }

  @Test
  void aLightFromBehindTheMeterAddsNothing() {
    List<Double> readings =
        together(
            setup(
                Map.of(),
                light("rim", 0, 3, "toward_light", 16),
                light("key", 0, -3, "toward_light", 8)));
    assertEquals(16, readings.get(0), 1e-9);
    assertEquals(8, readings.get(1), 1e-9);
  }

  @Test
  void theAmbientIsInItFromTheFirstLightOn() {
    double likeTheFlash = 6 + 7;
    List<Double> readings =
        together(
            setup(
                Map.of(
                    "ambient",
                    Map.of("ev100", likeTheFlash),
                    "exposure",
                    Map.of("f_number", 8.0, "time", "1/128", "iso", 100.0)),
                light("key", 0, -3, "toward_light", 8)));
    assertEquals(8 * Math.sqrt(2), readings.get(0), 0.01);
  }

  @Test
  void onAllSetupsOfTheDemoNothingThatIsAddedTakesLightAway() {
    int compared = 0;
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      Figures figures = FiguresComputation.of(setup);
      for (BuildUp.Step step : BuildUp.of(setup, figures)) {
        if (step.together().isPresent()) {
          compared++;
          assertTrue(
              step.together().get().reading().value()
                  >= step.light().level().orElseThrow().reading().value() - 1e-9,
              () -> setup.title() + " " + step.light().light().id());
        }
      }
    }
    assertTrue(compared > 200, compared + " steps were compared");
  }

  /** The figures' own sum at a target, found another way, with every meter held to the camera. */
  @Test
  void theLastStepIsTheSumOfTheTarget() {
    SetupDocument setup =
        setup(
            Map.of("ambient", Map.of("ev100", 9.0)),
            light("one", 2, -2, "toward_camera", 5.6),
            light("two", -3, -1, "toward_camera", 4),
            light("three", 1, -3, "toward_camera", 2.8));
    Figures figures = FiguresComputation.of(setup);
    assertEquals(
        figures.targets().getFirst().spill().sums().towardCameraOffset().orElseThrow().value(),
        BuildUp.of(setup, figures).getLast().together().orElseThrow().fromShooting().value(),
        1e-9);
  }
}
