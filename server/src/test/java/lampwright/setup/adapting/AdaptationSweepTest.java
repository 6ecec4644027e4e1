package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.Ev100;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.RandomDocuments;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** Random valid setups and kits at the ends of all bounds give an answer, never an error. */
class AdaptationSweepTest {

  private static final int CASES = 300;
  private static final List<Weights.Preset> PRESETS = List.of(Weights.Preset.values());

  @Test
  void everyValidSetupAndKitHasAnAnswer() {
    int adapted = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Random random = new Random(seed);
      SetupDocument setup = RandomDocuments.setup(random);
      Kit kit = RandomDocuments.kit(random);
      Optional<Ev100> ambient =
          random.nextBoolean() ? Optional.empty() : Optional.of(new Ev100(random.nextInt(20)));
      Limits limits =
          random.nextInt(3) > 0
              ? Limits.none()
              : new Limits(
                  Optional.of(setup.exposure().iso()),
                  Optional.of(setup.exposure().fNumber()),
                  Optional.of(setup.exposure().time()));
      Weights.Preset preset = PRESETS.get(random.nextInt(PRESETS.size()));
      Answer answer;
      try {
        answer = AdaptationSearch.adapt(setup, kit, ambient, limits, preset.weights());
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed, e);
      }
      adapted += check(answer, "seed " + seed);
    }
    assertTrue(adapted > CASES / 20, adapted + " adapted");
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
        yield 0;
      }
    };
  }

  private static void check(List<Adaptation> adaptations, String where) {
    double before = 0;
    for (Adaptation adaptation : adaptations) {
      assertTrue(Double.isFinite(adaptation.cost()) && adaptation.cost() >= before, where);
      before = adaptation.cost();
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
