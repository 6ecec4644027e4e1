package lampwright.setup.without;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.setup.Burning;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.FiguresComputation;
import org.junit.jupiter.api.Test;

/** What turning one light does, and what it leaves alone. */
class EffectTest {

  private static final LightId RIM = new LightId("rim");
  private static final LightId KEY = new LightId("key");

  private static Effect without(SetupDocument setup, LightId light) {
    return Effect.of(
        LightByLight.of(setup, FiguresComputation.of(setup)),
        Optional.of(light),
        Burning.ALL,
        Burning.ALL.without(light),
        _ -> true);
  }

  private static SetupDocument keyAndRim(Map<String, Object> rim) {
    return OneFace.setup(
        Map.of("ambient", Map.of("ev100", 9.0)),
        OneFace.light("key", "key", -1, -3, "toward_light", 8),
        rim);
  }

  private static Map<String, Object> shoulder(double x, double y) {
    return OneFace.with(
        OneFace.light("rim", "rim", x, y, "toward_light", 11),
        "target",
        Map.of("name", "shoulder", "at", OneFace.point(0.2, 0.1, 1.4)));
  }

  @Test
  void aRimFromBehindIsThereForItsEdgeAlone() {
    Effect effect = without(keyAndRim(shoulder(1, 3)), RIM);
    Effect.Own own = effect.own().orElseThrow();
    assertTrue(own.edge());
    assertTrue(own.shows());
    assertTrue(own.share() > 0.9, "little but the ambient reaches a meter that is turned to it");
    assertFalse(effect.showsOnFace());
    assertEquals(Effect.Stays.FACE, effect.stays());
  }

  @Test
  void fromTheFrontItIsNoEdgeAnyMore() {
    Effect effect = without(keyAndRim(shoulder(1, -3)), RIM);
    assertFalse(effect.own().orElseThrow().edge());
    assertTrue(effect.showsOnFace());
    assertEquals(Effect.Stays.NOTHING, effect.stays());
  }

  @Test
  void spillOnAnotherTargetIsToldOnceAndNeverAsARise() {
    int spills = 0;
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      for (Light light : setup.lights()) {
        Effect effect = without(setup, light.id());
        List<Metered> places = effect.elsewhere().stream().map(one -> one.place().at()).toList();
        assertEquals(places.size(), Set.copyOf(places).size(), setup.title());
        for (Effect.Elsewhere one : effect.elsewhere()) {
          assertTrue(one.shift().change().map(change -> change.value() < 0).orElse(true));
          spills++;
        }
      }
    }
    assertTrue(spills > 100, spills + " spills");
  }

  @Test
  void aKeyPartsTheSides() {
    Effect effect = without(keyAndRim(shoulder(1, 3)), KEY);
    assertTrue(effect.lit().isPresent());
    assertEquals(Optional.empty(), effect.shadow());
  }

  /** A tenth of a stop is a meter's last digit: common practice, no source. */
  @Test
  void lessThanHalfATenthOfAStopIsNoChange() {
    Effect effect =
        without(
            OneFace.setup(
                Map.of(),
                OneFace.light("key", "key", -1, -3, "toward_camera", 8),
                OneFace.light("rim", "rim", 1, -3, "toward_camera", 1.0)),
            RIM);
    assertFalse(effect.own().orElseThrow().shows());
    assertEquals(Optional.empty(), effect.lit());
    assertTrue(effect.shadow().isPresent(), "with the key shaded off, it is all that is left");
  }
}
