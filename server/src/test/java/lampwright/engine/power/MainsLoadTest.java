package lampwright.engine.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.Working;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Microfarads;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Volts;
import lampwright.engine.unit.WattHours;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;
import org.junit.jupiter.api.Test;

final class MainsLoadTest {

  private static final long SEED = 20261125;
  private static final Mains HOUSE = new Mains(new Volts(230), 0.65);

  private static MainsHead head(double energyWs, double recycleS, double lampW) {
    return new MainsHead(
        "head " + energyWs, WattSeconds.of(energyWs), Seconds.of(recycleS), 0.8, Watts.of(lampW));
  }

  private static MainsLoad cellist() {
    return new MainsLoad(HOUSE, Collections.nCopies(3, head(600, 1.3, 150)));
  }

  /** REFERENCE 17b, an invented example computed independently: 1731, 2181 W, 14.59 A, 5033 VA. */
  @Test
  void threeHeadsChargingAtOnceAgreeWithTheWorkedExample() {
    assertEquals(1731, cellist().charging().value(), 0.5);
    assertEquals(2180.769, cellist().total().value(), 0.001);
    assertEquals(14.587, cellist().current().value(), 0.001);
    // The example's 5033 is of 2181 W, rounded up on the way.
    assertEquals(5033, cellist().generator(1.5).value(), 1);
  }

  @Test
  void threeHeadsAreTooMuchForTenAmperesAndChargeInTurnsOrSlower() {
    MainsLoad load = cellist();
    Amperes limit = Amperes.of(10);
    ChargingTurns turns = load.turnsFor(limit).orElseThrow();
    // 10 A carry 1495 W; less 450 W of lamps 1045 W, one head of 577 W at a time.
    assertEquals(3, turns.turns().size());
    assertEquals(3.9, turns.untilReady().value(), 1e-12);
    assertEquals(1026.923 / (230 * 0.65), turns.current().value(), 1e-3);
    double slower = load.slowdownFor(limit).orElseThrow();
    assertEquals(1730.769 / 1045, slower, 1e-5);
    MainsLoad slowed = new MainsLoad(HOUSE, Collections.nCopies(3, head(600, 1.3 * slower, 150)));
    assertEquals(10, slowed.current().value(), 1e-9);
  }

  @Test
  void lampsThatAloneExceedTheLimitLeaveNothingToChargeWith() {
    MainsLoad load = cellist();
    assertEquals(Optional.empty(), load.slowdownFor(Amperes.of(3)));
    assertEquals(Optional.empty(), load.turnsFor(Amperes.of(3)));
    assertEquals(Optional.of(1.0), load.slowdownFor(Amperes.of(15)));
    assertEquals(1, load.turnsFor(Amperes.of(15)).orElseThrow().turns().size());
  }

  @Test
  void anEmptyCircuitDrawsNothingAndNeedsNoTurn() {
    MainsLoad nothing = new MainsLoad(HOUSE, List.of());
    assertEquals(0, nothing.current().value());
    ChargingTurns turns = nothing.turnsFor(Amperes.of(1)).orElseThrow();
    assertEquals(List.of(), turns.turns());
    assertEquals(0, turns.untilReady().value());
  }

  @Test
  void turnsAreAsFewAsTryingEveryWayFinds() {
    Random random = new Random(SEED);
    int several = 0;
    for (int trial = 0; trial < 300; trial++) {
      List<MainsHead> heads = new ArrayList<>();
      for (int i = random.nextInt(1, 7); i > 0; i--) {
        heads.add(head(random.nextInt(1, 12) * 100, random.nextInt(1, 4), 0));
      }
      MainsLoad load = new MainsLoad(HOUSE, heads);
      double limitW = random.nextInt(300, 1600);
      double[] watts = heads.stream().mapToDouble(each -> each.charging().value()).toArray();
      int fewest = fewestByTryingAll(watts, new double[watts.length], 0, limitW);
      Optional<ChargingTurns> found = load.turnsFor(HOUSE.current(Watts.of(limitW)));
      String where = "seed " + SEED + ", trial " + trial;
      assertEquals(fewest < Integer.MAX_VALUE, found.isPresent(), where);
      if (found.isPresent()) {
        ChargingTurns turns = found.get();
        several += turns.turns().size() > 1 ? 1 : 0;
        assertEquals(fewest, turns.turns().size(), where);
        List<Integer> all = new ArrayList<>();
        turns.turns().forEach(all::addAll);
        Collections.sort(all);
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < watts.length; i++) {
          numbers.add(i);
        }
        assertEquals(numbers, all, where);
        assertTrue(HOUSE.load(turns.current()).value() <= limitW * (1 + 2e-9), where);
      }
    }
    assertTrue(several > 50, "trials with several turns: " + several);
  }

  private static int fewestByTryingAll(double[] watts, double[] turns, int head, double limitW) {
    if (head == watts.length) {
      int used = 0;
      for (double turn : turns) {
        used += turn > 0 ? 1 : 0;
      }
      return used;
    }
    int best = Integer.MAX_VALUE;
    for (int turn = 0; turn < turns.length; turn++) {
      if (turns[turn] + watts[head] <= limitW * (1 + 1e-9)) {
        turns[turn] += watts[head];
        best = Math.min(best, fewestByTryingAll(watts, turns, head + 1, limitW));
        turns[turn] -= watts[head];
      }
    }
    return best;
  }

  @Test
  void sixteenHeadsAreTheMost() {
    assertTrue(
        new MainsLoad(HOUSE, Collections.nCopies(16, head(600, 1, 0)))
            .turnsFor(Amperes.of(16))
            .isPresent());
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new MainsLoad(HOUSE, Collections.nCopies(17, head(600, 1, 0))));
    assertTrue(refusal.toString().endsWith("Heads on a circuit (17) must be from 0 to 16."));
  }

  @Test
  void workingsEndInTheNumbersThatWereGiven() {
    Working current = cellist().currentWorking();
    assertEquals(cellist().current().value(), current.value());
    assertEquals(cellist().total().value(), current.parts().getFirst().value());
    assertEquals(6, current.parts().getFirst().parts().size());
    assertEquals(cellist().generator(2).value(), cellist().generatorWorking(2).value());
    Battery battery = new Battery(WattHours.of(60), 0.7);
    assertEquals(302.4, battery.flashesWorking(WattSeconds.of(500)).value(), 1e-9);
    HeatLoad heat = new HeatLoad(WattSeconds.of(500), 20, Watts.of(150));
    assertEquals(heat.average().value(), heat.averageWorking().value());
    Capacitors capacitors = new Capacitors(Microfarads.of(1500), Volts.of(360));
    assertEquals(97.2, capacitors.storedWorking().value(), 1e-9);
  }

  @Test
  void aPaceAtTheMakersLimitIsWithinIt() {
    HeatLoad heat = new HeatLoad(WattSeconds.of(500), 20, Watts.of(150));
    assertTrue(heat.isWithin(20));
    assertFalse(heat.isWithin(19.9));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Mains(Volts.of(0), 0.6));
    assertThrows(IllegalArgumentException.class, () -> new Mains(Volts.of(230), 0));
    assertThrows(IllegalArgumentException.class, () -> new Mains(Volts.of(230), 1.01));
    assertThrows(IllegalArgumentException.class, () -> HOUSE.generator(Watts.of(1), 0.9));
    assertThrows(IllegalArgumentException.class, () -> head(600, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Battery(WattHours.of(60), 1.1));
    Battery battery = new Battery(WattHours.of(60), 0.7);
    assertThrows(IllegalArgumentException.class, () -> battery.flashes(WattSeconds.of(0)));
    HeatLoad heat = new HeatLoad(WattSeconds.of(500), 20, Watts.of(150));
    assertThrows(IllegalArgumentException.class, () -> heat.isWithin(0));
  }
}
