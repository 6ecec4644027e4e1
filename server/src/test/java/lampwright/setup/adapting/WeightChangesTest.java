package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.SetupDocument;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;

class WeightChangesTest {

  private static final SetupDocument DANCER = WorkedExamples.dancer();
  private static final Kit KIT_B = Documents.kit(WorkedExamples.dancerKitB());

  private static WeightChanges changes(Map<String, Object> json) {
    return Documents.sound(WeightChanges.FORM, json);
  }

  private static Adaptation best(Map<String, Object> json) {
    return assertInstanceOf(
            Answer.Adapted.class,
            AdaptationSearch.adapt(DANCER, KIT_B, Wishes.none().withChanges(changes(json))))
        .adaptations()
        .getFirst();
  }

  @Test
  void whatIsNotNamedStaysAsThePresetHasIt() {
    Weights preset = Weights.Preset.LOWEST_ISO.weights();
    assertEquals(preset, WeightChanges.none().in(preset));
    assertEquals(
        new Weights(
            preset.ambient(),
            preset.depth(),
            preset.time(),
            0,
            preset.framing(),
            preset.softness(),
            preset.colour(),
            preset.evenness(),
            preset.carryPerKg(),
            4,
            preset.handling(),
            preset.touch(),
            preset.givenUp()),
        changes(Map.of("iso", 0.0, "pace_per_s", 4.0)).in(preset));
  }

  @Test
  void anAmbientThatOutweighsAllElseIsHeldAndOneWithoutWeightIsNot() {
    assertEquals(0, best(Map.of("ambient", 100.0)).ambientChange().orElseThrow().value(), 1.0 / 3);
    assertTrue(Math.abs(best(Map.of("ambient", 0.0)).ambientChange().orElseThrow().value()) > 1);
  }

  @Test
  void anApertureThatOutweighsAllElseKeepsTheDepthOfField() {
    assertEquals(0, best(Map.of("depth", 100.0)).depthChange().value(), 1.0 / 3);
  }
}
