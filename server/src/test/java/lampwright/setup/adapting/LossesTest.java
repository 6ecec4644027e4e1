package lampwright.setup.adapting;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

class LossesTest {

  private static final Map<String, Object> HEAD =
      Map.of(
          "name",
          "400 W·s battery head",
          "energy_ws",
          400.0,
          "output",
          Map.of("kind", "guide_number", "guide_number_m", 62.0));

  private static final Map<String, Object> SNOOT =
      Map.of("name", "snoot", "kind", "snoot", "loss_stops", 1.0);

  @Test
  void aLightThatLosesItsSnootIsSaidToSpill() {
    assertTrue(
        losses(List.of())
            .contains(
                "“pool” spills: standard reflector instead of snoot. Flag off what it must not"
                    + " reach."));
    assertEquals(List.of(), losses(List.of(Map.of("modifier", SNOOT))));
  }

  private static List<String> losses(List<Object> modifiers) {
    SetupDocument setup =
        Documents.setup(
            Map.of(
                "title",
                "A pool of light",
                "exposure",
                Map.of("f_number", 5.6, "time", "1/125", "iso", 100.0),
                "lights",
                List.of(
                    Map.of(
                        "id",
                        "pool",
                        "role",
                        "accent",
                        "head",
                        HEAD,
                        "modifier",
                        SNOOT,
                        "place",
                        Map.of("x_m", 2.0, "y_m", 0.0, "z_m", 1.0),
                        "target",
                        Map.of("name", "hands", "at", Map.of("x_m", 0.0, "y_m", 0.0, "z_m", 1.0)),
                        "stops_down",
                        4.0))));
    Kit kit =
        Documents.kit(
            Map.of(
                "name", "a head", "heads", List.of(Map.of("head", HEAD)), "modifiers", modifiers));
    Answer answer = AdaptationSearch.adapt(setup, kit, Wishes.none());
    return english(
        assertInstanceOf(Answer.Adapted.class, answer).adaptations().getFirst().losses());
  }
}
