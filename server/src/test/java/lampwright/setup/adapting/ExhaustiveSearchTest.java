package lampwright.setup.adapting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import lampwright.Sweep;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import org.junit.jupiter.api.Test;

/**
 * The search against trying everything: every camera setting, every way to make each light, every
 * step of every dial, every way to give the kit out. {@link StatedProblem} says what there is.
 */
class ExhaustiveSearchTest {

  private static final double ROUNDING = 1e-9;

  /** How many cases came out how. */
  private static final class Tally {
    private int adapted;
    private int notEnough;
    private int nothing;

    void add(Answer answer) {
      switch (answer) {
        case Answer.Adapted _ -> adapted++;
        case Answer.NotEnoughGear few when !few.nearest().isEmpty() -> notEnough++;
        case Answer.NotEnoughGear _ -> nothing++;
      }
    }

    void isMixed(int cases) {
      String tally = adapted + " adapted, " + notEnough + " in part, " + nothing + " not at all";
      assertTrue(adapted > cases / 4 && notEnough > cases / 10 && nothing < cases / 4, tally);
    }
  }

  @Test
  void atOneCameraSettingTheAnswerIsTheBestOfAllAllotmentsOfManyKits() {
    areTheBest(Sweep.cases(1_000), RandomCase::ofOneSetting);
  }

  @Test
  void overAllSettingsOfSmallCamerasTheAnswerIsTheBestOfAll() {
    areTheBest(Sweep.cases(100), RandomCase::ofSmallCameras);
  }

  private static void areTheBest(int cases, LongFunction<RandomCase> draw) {
    Tally tally = new Tally();
    for (long seed = 0; seed < cases; seed++) {
      RandomCase drawn = draw.apply(seed);
      Answer answer = AdaptationSearch.adapt(drawn.setup(), drawn.kit(), drawn.wishes());
      tally.add(answer);
      isTheBest(drawn, answer, "seed " + seed);
    }
    tally.isMixed(cases);
  }

  private static void isTheBest(RandomCase drawn, Answer answer, String seed) {
    StatedProblem stated = new StatedProblem(drawn.setup(), drawn.kit(), drawn.wishes());
    if (stated.settings().isEmpty()) {
      assertInstanceOf(Answer.NotEnoughGear.class, answer, seed);
      return;
    }
    EveryAllotment.Best best = EveryAllotment.of(stated);
    Proof proof = proof(answer);
    assertTrue(proof.isOptimal(), seed);
    assertEquals(best.cost(), proof.atLeast(), ROUNDING, seed);
    List<Adaptation> found = found(answer);
    assertEquals(best.lit() > 0, !found.isEmpty(), seed);
    if (found.isEmpty()) {
      assertInstanceOf(Answer.NotEnoughGear.class, answer, seed);
      return;
    }
    Adaptation adaptation = found.getFirst();
    double fromDocument =
        CostForTests.of(drawn.setup(), adaptation, drawn.kit(), drawn.wishes().weights());
    Optional<Double> within = drawn.wishes().limits().lightWithin().map(Stops::value);
    assertEquals(best.cost(), adaptation.cost(), ROUNDING, seed);
    assertEquals(fromDocument, adaptation.cost(), ROUNDING, seed);
    assertEquals(best.outside(), outside(adaptation, drawn.wishes(), within.orElse(1_000.0)), seed);
    // Where nothing else is said a light within a stop counts as made.
    assertEquals(
        outside(adaptation, drawn.wishes(), within.orElse(1.0)) == 0,
        answer instanceof Answer.Adapted,
        seed);
  }

  private static Proof proof(Answer answer) {
    return switch (answer) {
      case Answer.Adapted adapted -> adapted.proof();
      case Answer.NotEnoughGear few -> few.proof();
    };
  }

  private static List<Adaptation> found(Answer answer) {
    return switch (answer) {
      case Answer.Adapted adapted -> adapted.adaptations();
      case Answer.NotEnoughGear few -> few.nearest();
    };
  }

  /** Lights that are too far from their level, or left out without being allowed to. */
  private static int outside(Adaptation adaptation, Wishes wishes, double withinStops) {
    int outside = 0;
    for (AdaptedLight light : adaptation.lights()) {
      boolean allowed =
          light
              .made()
              .map(m -> Math.abs(m.deviation().value()) <= withinStops + 1e-6)
              .orElseGet(() -> mayBeLeftOut(light.original().light().id(), wishes));
      outside += allowed ? 0 : 1;
    }
    return outside;
  }

  private static boolean mayBeLeftOut(LightId id, Wishes wishes) {
    return wishes.limits().mayGiveUp().contains(id)
        || wishes.pins().stream().anyMatch(pin -> pin.light().equals(id) && !pin.lit());
  }
}
