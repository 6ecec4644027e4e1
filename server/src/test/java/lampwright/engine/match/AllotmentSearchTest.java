package lampwright.engine.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AllotmentSearchTest {

  private static final double EVERYTHING = Double.POSITIVE_INFINITY;
  private static final int SMALL_CASES = 10_000;

  @Test
  void theOnlyHeadGoesWhereItSavesMost() {
    Uses head = Uses.of(new int[] {0}, new double[] {1});
    List<Choice> key = List.of(new Choice(1, 0, head), new Choice(24, 0, Uses.NOTHING));
    List<Choice> fill = List.of(new Choice(0, 0, head), new Choice(12, 0, Uses.NOTHING));
    assertEquals(
        Optional.of(new Allotment(List.of(0, 1), 13, 13)),
        new AllotmentSearch(new double[] {1}, 0)
            .least(List.of(key, fill), EVERYTHING, () -> false));
  }

  @Test
  void onlyTheLongestWaitIsPaidFor() {
    List<Choice> slowOrDear =
        List.of(new Choice(0, 4, Uses.NOTHING), new Choice(3, 0, Uses.NOTHING));
    AllotmentSearch search = new AllotmentSearch(new double[0], 1);
    assertEquals(
        Optional.of(new Allotment(List.of(1), 3, 3)),
        search.least(List.of(slowOrDear), EVERYTHING, () -> false));
    assertEquals(
        Optional.of(new Allotment(List.of(0, 0), 4, 4)),
        search.least(List.of(slowOrDear, slowOrDear), EVERYTHING, () -> false));
  }

  @Test
  void noRowsCostNothing() {
    AllotmentSearch search = new AllotmentSearch(new double[] {1}, 1);
    assertEquals(
        Optional.of(new Allotment(List.of(), 0, 0)),
        search.least(List.of(), EVERYTHING, () -> false));
    assertEquals(0, search.lowerBound(List.of()));
    assertEquals(Optional.empty(), search.least(List.of(), 0, () -> false));
  }

  @Test
  void aRowWithoutAnyChoiceHasNoAllotment() {
    List<List<Choice>> rows = List.of(List.of(), List.of(new Choice(1, 0, Uses.NOTHING)));
    AllotmentSearch search = new AllotmentSearch(new double[] {1}, 1);
    assertEquals(Optional.empty(), search.least(rows, EVERYTHING, () -> false));
    assertEquals(EVERYTHING, search.lowerBound(rows));
  }

  @Test
  void whatIsNotASupplyOrAPriceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new AllotmentSearch(new double[] {-1}, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new AllotmentSearch(new double[] {Double.NaN}, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new AllotmentSearch(new double[0], EVERYTHING));
    Uses second = Uses.of(new int[] {1}, new double[] {1});
    List<List<Choice>> rows = List.of(List.of(new Choice(0, 0, second)));
    AllotmentSearch search = new AllotmentSearch(new double[] {1}, 0);
    assertThrows(IllegalArgumentException.class, () -> search.least(rows, EVERYTHING, () -> false));
    assertThrows(IllegalArgumentException.class, () -> search.lowerBound(rows));
  }

  @Test
  void roundingDoesNotLoseWhatJustSuffices() {
    Uses third = Uses.of(new int[] {0}, new double[] {0.1});
    List<Choice> row = List.of(new Choice(0, 0, third), new Choice(1, 0, Uses.NOTHING));
    AllotmentSearch search = new AllotmentSearch(new double[] {0.3}, 0);
    assertEquals(
        Optional.of(new Allotment(List.of(0, 0, 0), 0, 0)),
        search.least(List.of(row, row, row), EVERYTHING, () -> false));
  }

  /** With waits, ties, amounts that are not whole, and problems without any allotment. */
  @Test
  void costsAsMuchAsTryingEverythingSays() {
    int without = 0;
    for (int seed = 0; seed < SMALL_CASES; seed++) {
      AllotmentCase problem = AllotmentCase.small(new Random(seed));
      double least = TryingEverything.leastCost(problem);
      Optional<Allotment> answer = search(problem).least(problem.rows(), EVERYTHING, () -> false);
      assertEquals(least < EVERYTHING, answer.isPresent(), "seed " + seed);
      if (answer.isPresent()) {
        assertEquals(least, answer.get().cost(), 1e-9, "seed " + seed);
        assertEquals(
            least, problem.costOf(answer.get().choiceOfRow()), 1e-9, "choices, seed " + seed);
        assertTrue(answer.get().isProved(), "seed " + seed);
      } else {
        without++;
      }
    }
    assertTrue(without > SMALL_CASES / 20 && without < SMALL_CASES / 2, "without any: " + without);
  }

  @Test
  void onlyWhatCostsLessThanAskedIsReturned() {
    for (int seed = 0; seed < SMALL_CASES; seed++) {
      AllotmentCase problem = AllotmentCase.small(new Random(seed));
      double least = TryingEverything.leastCost(problem);
      if (least < EVERYTHING) {
        AllotmentSearch search = search(problem);
        assertEquals(
            Optional.empty(), search.least(problem.rows(), least, () -> false), "seed " + seed);
        assertEquals(
            Optional.empty(),
            search.least(problem.rows(), least - 0.3, () -> false),
            "seed " + seed);
        Allotment answer = search.least(problem.rows(), least + 0.001, () -> false).orElseThrow();
        assertEquals(least, answer.cost(), 1e-9, "seed " + seed);
      }
    }
  }

  /** Prices from other problems with the same supplies; bounds before and after. */
  @Test
  void noBoundIsAboveTheLeastCost() {
    for (int seed = 0; seed < SMALL_CASES / 4; seed++) {
      AllotmentCase first = AllotmentCase.small(new Random(seed));
      AllotmentSearch search = search(first);
      for (int scene = 0; scene < 4; scene++) {
        AllotmentCase problem = scene == 0 ? first : dearer(first, new Random(7 * seed + scene));
        double least = TryingEverything.leastCost(problem);
        String about = "seed " + seed + ", scene " + scene;
        assertTrue(search.lowerBound(problem.rows()) <= least + 1e-9, about);
        double cost =
            search
                .least(problem.rows(), EVERYTHING, () -> false)
                .map(Allotment::cost)
                .orElse(EVERYTHING);
        assertEquals(least, cost, 1e-9, about);
        assertTrue(search.lowerBound(problem.rows()) <= least + 1e-9, about);
      }
    }
  }

  private static AllotmentSearch search(AllotmentCase problem) {
    return new AllotmentSearch(problem.supplies(), problem.pricePerWait());
  }

  /** The same rows at another camera setting. */
  private static AllotmentCase dearer(AllotmentCase problem, Random random) {
    List<List<Choice>> rows =
        problem.rows().stream()
            .map(
                row ->
                    row.stream()
                        .map(
                            choice ->
                                new Choice(
                                    choice.cost() + random.nextInt(3),
                                    choice.waiting(),
                                    choice.uses()))
                        .toList())
            .toList();
    return new AllotmentCase(problem.supplies(), problem.pricePerWait(), rows);
  }

  @Test
  void moreSuppliesNeverCostMore() {
    for (int seed = 0; seed < 40; seed++) {
      AllotmentCase problem = AllotmentCase.studio(new Random(seed), 12, 2, 1);
      double least = problem.least().cost();
      for (int k = seed % 4; k < problem.supplies().length; k += 4) {
        double[] more = problem.supplies().clone();
        more[k] += 1;
        double cost = new AllotmentCase(more, 1, problem.rows()).least().cost();
        assertTrue(cost <= least + 1e-9, "seed " + seed + ", supply " + k);
      }
    }
  }

  @Test
  void theOrderOfRowsAndChoicesChangesNoCost() {
    for (int seed = 0; seed < 40; seed++) {
      AllotmentCase problem = AllotmentCase.studio(new Random(seed), 12, 2, 1);
      Random random = new Random(seed);
      List<List<Choice>> shuffled = new ArrayList<>();
      for (List<Choice> row : problem.rows()) {
        List<Choice> choices = new ArrayList<>(row);
        Collections.shuffle(choices, random);
        shuffled.add(choices);
      }
      Collections.shuffle(shuffled, random);
      double cost = new AllotmentCase(problem.supplies(), 1, shuffled).least().cost();
      assertEquals(problem.least().cost(), cost, 1e-8, "seed " + seed);
    }
  }

  @Test
  void theSameCallsGiveTheSameAnswers() {
    List<List<Allotment>> answers = new ArrayList<>();
    for (int run = 0; run < 2; run++) {
      AllotmentSearch search = search(AllotmentCase.studio(new Random(0), 12, 3, 1));
      List<Allotment> scenes = new ArrayList<>();
      for (int scene = 0; scene < 10; scene++) {
        List<List<Choice>> rows = AllotmentCase.studio(new Random(scene), 12, 3, 1).rows();
        scenes.add(search.least(rows, EVERYTHING, () -> false).orElseThrow());
      }
      answers.add(scenes);
    }
    assertEquals(answers.getFirst(), answers.getLast());
  }

  @Test
  void stoppedAtOnceItStillSaysWhatItKnows() {
    int unproved = 0;
    for (int seed = 0; seed < 30; seed++) {
      AllotmentCase problem = AllotmentCase.studio(new Random(seed), 12, 3, 1);
      double least = problem.least().cost();
      Allotment answer =
          search(problem).least(problem.rows(), EVERYTHING, () -> true).orElseThrow();
      assertEquals(answer.cost(), problem.costOf(answer.choiceOfRow()), 1e-9, "seed " + seed);
      assertTrue(answer.cost() >= least - 1e-9, "seed " + seed);
      assertTrue(answer.atLeast() <= least + 1e-9, "seed " + seed);
      unproved += answer.isProved() ? 0 : 1;
    }
    assertTrue(unproved > 0, "Nothing was stopped before it was proved.");
  }

  /** A search stopped within the tree, at any question. */
  @Test
  void whatIsProvedWhenStoppedIsTrue() {
    for (int seed = 0; seed < SMALL_CASES / 4; seed++) {
      AllotmentCase problem = AllotmentCase.small(new Random(seed));
      double least = TryingEverything.leastCost(problem);
      int[] questions = {seed % 12};
      Optional<Allotment> answer =
          search(problem).least(problem.rows(), EVERYTHING, () -> questions[0]-- <= 0);
      if (answer.isPresent()) {
        assertTrue(answer.get().atLeast() <= least + 1e-9, "seed " + seed);
        assertTrue(answer.get().cost() >= least - 1e-9, "seed " + seed);
      }
    }
  }

  @Test
  void twelveLightsThatAllWantTheSameAreServed() {
    AllotmentCase problem = AllotmentCase.studio(new Random(12), 12, 1, 0, _ -> 0);
    Allotment answer = problem.least();
    assertTrue(answer.isProved());
    assertEquals(answer.cost(), problem.costOf(answer.choiceOfRow()), 1e-9);
  }

  /** Two packs: lights draw on either by powers that are no whole parts of what there is. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 0.5", "3, 4"})
  void lightsShareTheEnergyOfPacks(long seed, double pricePerWait) {
    Random random = new Random(seed);
    List<List<Choice>> rows = new ArrayList<>();
    for (int light = 0; light < 12; light++) {
      double wanted = 100 + 900 * random.nextDouble();
      List<Choice> row = new ArrayList<>();
      row.add(new Choice(12, 0, Uses.NOTHING));
      for (int pack = 0; pack < 2; pack++) {
        for (int step = 0; step < 15; step++) {
          double energyWs = 1200 / StrictMath.exp(step * 0.2);
          double miss = Math.abs(StrictMath.log(energyWs / wanted)) / StrictMath.log(2);
          row.add(
              new Choice(miss, energyWs / 400, Uses.of(new int[] {pack}, new double[] {energyWs})));
        }
      }
      rows.add(row);
    }
    AllotmentCase problem = new AllotmentCase(new double[] {1200, 2400}, pricePerWait, rows);
    Allotment answer = problem.least();
    assertTrue(answer.isProved());
    assertEquals(answer.cost(), problem.costOf(answer.choiceOfRow()), 1e-9);
  }
}
