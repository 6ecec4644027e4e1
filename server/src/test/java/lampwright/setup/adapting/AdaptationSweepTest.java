package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.Sweep;
import lampwright.engine.exposure.Ev100;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.RandomDocuments;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** Random valid setups and kits at the ends of all bounds give an answer, never an error. */
@Order(1)
class AdaptationSweepTest {

  private static final int CASES = Sweep.cases(80);
  private static final List<Weights.Preset> PRESETS = List.of(Weights.Preset.values());

  @Test
  void everyValidSetupAndKitHasAnAnswer() {
    int made = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Random random = new Random(seed);
      SetupDocument setup = RandomDocuments.setup(random);
      Kit kit = RandomDocuments.kit(random);
      Optional<Ev100> ambient =
          random.nextBoolean() ? Optional.empty() : Optional.of(new Ev100(random.nextInt(20)));
      Limits limits =
          random.nextInt(3) > 0
              ? Limits.none()
              : Limits.camera(
                  Optional.of(setup.exposure().iso()),
                  Optional.of(setup.exposure().fNumber()),
                  Optional.of(setup.exposure().time()));
      Weights.Preset preset = PRESETS.get(random.nextInt(PRESETS.size()));
      Answer answer;
      try {
        Wishes wishes = Wishes.none().withLimits(limits).withPreset(preset);
        answer =
            AdaptationSearch.adapt(setup, kit, ambient.map(wishes::withAmbient).orElse(wishes));
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed, e);
      }
      made += check(answer, "seed " + seed);
    }
    assertTrue(made > CASES / 6, made + " with a plan");
  }

  private static int check(Answer answer, String where) {
    return switch (answer) {
      case Answer.Adapted adapted -> {
        assertTrue(!adapted.adaptations().isEmpty(), where);
        check(adapted.adaptations(), where);
        yield 1;
      }
      case Answer.NotEnoughGear falling -> {
        assertTrue(!falling.reasons().isEmpty(), where);
        check(falling.nearest(), where);
        yield falling.nearest().isEmpty() ? 0 : 1;
      }
    };
  }

  private static void check(List<Adaptation> adaptations, String where) {
    double before = 0;
    long unlitBefore = 0;
    for (Adaptation adaptation : adaptations) {
      long unlit = adaptation.lights().stream().filter(light -> light.made().isEmpty()).count();
      assertTrue(Double.isFinite(adaptation.cost()), where);
      assertTrue(unlit > unlitBefore || adaptation.cost() >= before - 1e-9, where);
      before = adaptation.cost();
      unlitBefore = unlit;
      assertEquals(
          adaptation.document(),
          Documents.setup(SetupDocument.FORM.write(adaptation.document())),
          where);
      for (AdaptedLight light : adaptation.lights()) {
        light
            .made()
            .ifPresent(
                made -> {
                  assertTrue(Double.isFinite(made.deviation().value()), where);
                  assertTrue(!made.powerShown().isEmpty(), where);
                });
      }
    }
  }
}
