package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.FromHitMark;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.api.Test;

/** Where one light of a build goes, as a small drawing. */
class StepPlaceTest {

  private static final Pattern LIGHT =
      Pattern.compile("class=\"mini-light\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"");

  private static String drawn(SetupDocument setup, Light light, List<Light> before) {
    return new StepPlace(setup, setup.numbersInBuildOrder(), WordsForTests.usual().notation())
        .of(light, before)
        .markup();
  }

  /** The drawing is a map: its angles and the ratio of its lengths are those on the ground. */
  @Test
  void everyLightOfTheDemoIsDrawnWhereItStandsToScale() {
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      double farthest =
          setup.lights().stream()
              .mapToDouble(light -> Math.hypot(light.place().x(), light.place().y()))
              .max()
              .orElseThrow();
      for (Light light : setup.lights()) {
        Matcher at = LIGHT.matcher(drawn(setup, light, List.of()));
        assertTrue(at.find(), setup.title());
        double right = Double.parseDouble(at.group(1)) - 80;
        double away = 80 - Double.parseDouble(at.group(2));
        double scale = 62 / Math.max(0.5, farthest);
        assertEquals(light.place().x() * scale, right, 0.06, setup.title() + light.id());
        assertEquals(light.place().y() * scale, away, 0.06, setup.title() + light.id());
      }
    }
  }

  @Test
  void itSaysTheSameInWordsAndShowsWhatIsSetAlready() {
    SetupDocument setup = new DemoSeeds().setup("white-line");
    List<Light> order = setup.lightsInBuildOrder();
    String drawing = drawn(setup, order.get(2), order.subList(0, 2));
    assertEquals(2, drawing.split("mini-set", -1).length - 1);
    FromHitMark from = FromHitMark.of(order.get(2).place(), setup);
    assertTrue(
        drawing.contains(
            "toward "
                + Math.round(from.direction().value())
                + "°, "
                + WordsForTests.usual().notation().length(from.overGround())
                + " from the hit mark"),
        drawing);
    assertTrue(drawing.contains(">3</text>"), drawing);
  }
}
