package lampwright.engine.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PowerTest {

  private static final long SEED = 20261124;
  private static final WattSeconds FULL = new WattSeconds(400);

  @ParameterizedTest
  @CsvSource({
    "1.832, 1.8, 0, 0",
    "1.85, 1.9, 0, 0",
    "0, 0, 0, 0",
    "-0.569, 0, 0.569, 0",
    "-0.02, 0, 0.02, 0",
    "8.3, 8, 0, 0.3",
    "8, 8, 0, 0",
    "7.97, 8, 0, 0"
  })
  void powersAreRoundedToWhatTheHeadCanShow(
      double exact, double set, double shortfall, double excess) {
    PowerSetting power = PowerRange.of(8, 0.1).quantise(new Stops(exact));
    assertEquals(set, power.set().value());
    assertEquals(shortfall, power.shortfall().value(), 1e-12);
    assertEquals(excess, power.excess().value(), 1e-12);
    assertEquals(exact - set, power.deviation().value(), 1e-12);
    assertEquals(shortfall == 0 && excess == 0, power.isReached());
  }

  @Test
  void settingsAreTheNearestOnesAndSortedFromFull() {
    Random random = new Random(SEED);
    for (double step : new double[] {0.1, 1.0 / 3, 0.5, 1, 0.3}) {
      PowerRange range = PowerRange.of(7, step);
      assertEquals(0, range.settings().getFirst().value());
      assertTrue(range.settings().getLast().value() <= 7);
      for (int i = 0; i < 2000; i++) {
        double exact = random.nextDouble(0, range.settings().getLast().value());
        Stops set = range.quantise(new Stops(exact)).set();
        assertTrue(range.settings().contains(set), "seed " + SEED);
        assertTrue(Math.abs(set.value() - exact) <= step / 2 + 1e-9, "seed " + SEED);
      }
    }
  }

  @Test
  void thirdsMeetFullStopsExactly() {
    PowerRange thirds = PowerRange.of(8, 1.0 / 3);
    assertEquals(25, thirds.settings().size());
    assertEquals(new Stops(3), thirds.settings().get(9));
    assertEquals(new Stops(8), thirds.settings().getLast());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1/1, 10.0, 400 W·s, 100 %",
    "1.3, 1/2 − 0.3, 8.7, 162 W·s, 41 %",
    "1.97, 1/4, 8.0, 102 W·s, 26 %",
    "2.5, 1/4 − 0.5, 7.5, 71 W·s, 18 %",
    "8, 1/256, 2.0, 1.6 W·s, 0.4 %"
  })
  void eachScaleShowsAPowerItsOwnWay(
      double down, String fraction, String units, String energy, String percent) {
    Stops stops = new Stops(down);
    assertEquals(fraction, PowerScale.FRACTIONS.show(stops, FULL));
    assertEquals(units, PowerScale.ONE_STOP_UNITS.show(stops, FULL));
    assertEquals(energy, PowerScale.WATT_SECONDS.show(stops, FULL));
    assertEquals(percent, PowerScale.PERCENT.show(stops, FULL));
  }

  @Test
  void numbersOnAScaleComeBackAsStops() {
    assertEquals(2, PowerScale.FRACTIONS.toStopsDown(0.25, FULL).value());
    assertEquals(2.5, PowerScale.ONE_STOP_UNITS.toStopsDown(7.5, FULL).value());
    assertEquals(2, PowerScale.WATT_SECONDS.toStopsDown(100, FULL).value());
    assertEquals(1, PowerScale.PERCENT.toStopsDown(50, FULL).value());
  }

  /** Two equal heads are a stop more, three about 1.6: common practice, no source. */
  @Test
  void moreHeadsAreMoreStops() {
    assertEquals(1, HeadCount.stopsOf(2).value());
    assertEquals(1.58, HeadCount.stopsOf(3).value(), 0.005);
    assertThrows(IllegalArgumentException.class, () -> HeadCount.stopsOf(0));
  }

  @Test
  void headsNeededUndoStopsOfHeads() {
    for (int heads = 1; heads <= 100; heads++) {
      assertEquals(heads, HeadCount.neededFor(HeadCount.stopsOf(heads)));
    }
    assertEquals(1, HeadCount.neededFor(new Stops(-3)));
    assertEquals(2, HeadCount.neededFor(new Stops(0.01)));
  }

  @Test
  void weakerFlashesCostLess() {
    FlashBudget budget =
        new FlashBudget(FULL, new Seconds(1.6), new Seconds(0.05), Optional.of(420.0));
    assertEquals(200, budget.energyAt(Stops.ONE).value());
    assertEquals(840, budget.flashesPerChargeAt(Stops.ONE).orElseThrow());
    assertEquals(0.8, budget.recycleAt(Stops.ONE).value());
    assertEquals(20, budget.framesPerSecondAt(new Stops(8)), "the floor rules");
    FlashBudget mains = new FlashBudget(FULL, new Seconds(1), new Seconds(0), Optional.empty());
    assertEquals(Optional.empty(), mains.flashesPerChargeAt(Stops.ONE));
  }

  @Test
  void cutPulsesGetShorterAndVoltagePulsesDoNot() {
    FlashPulse.Cut cut = new FlashPulse.Cut(new Seconds(1.0 / 800));
    FlashPulse.Voltage voltage = new FlashPulse.Voltage(new Seconds(1.0 / 800));
    double before = Double.POSITIVE_INFINITY;
    for (double down = 0; down <= 10; down += 0.1) {
      Stops stops = new Stops(down);
      double tenth = cut.tenthTime(stops).value();
      assertTrue(tenth <= before && tenth > 0);
      assertTrue(cut.halfTime(stops).value() <= tenth);
      assertTrue(cut.equivalentDuration(stops).value() > 0);
      assertEquals(voltage.tenthTime(Stops.ZERO), voltage.tenthTime(stops));
      before = tenth;
    }
    assertEquals(cut.tenthTime(Stops.ZERO), voltage.tenthTime(Stops.ZERO));
    assertEquals(cut.equivalentDuration(Stops.ZERO), voltage.equivalentDuration(Stops.ZERO));
  }

  /** The energy in the cut pulse, integrated slowly, is the fraction asked for. */
  @Test
  void cutTimeLeavesTheFractionOfTheEnergy() {
    FlashPulse.Cut cut = new FlashPulse.Cut(new Seconds(0.001));
    double tau = cut.decayConstant().value();
    for (double down = 0.5; down < 8; down += 0.5) {
      int steps = 100_000;
      double end = cut.cutTimeS(new Stops(down));
      double energy = 0;
      for (int i = 0; i < steps; i++) {
        energy += Math.exp(-(i + 0.5) * end / steps / tau) * end / steps / tau;
      }
      assertEquals(Math.pow(2, -down), energy, 1e-9);
    }
  }

  @Test
  void shuttersOnlyTakeLight() {
    Random random = new Random(SEED);
    for (int i = 0; i < 5000; i++) {
      Seconds half = new Seconds(random.nextDouble(1e-5, 5e-3));
      Seconds open = new Seconds(random.nextDouble(1e-4, 0.02));
      Stops down = new Stops(random.nextDouble(0, 9));
      for (FlashPulse pulse : List.of(new FlashPulse.Cut(half), new FlashPulse.Voltage(half))) {
        double leaf = ShutterLoss.leaf(pulse, down, open).value();
        assertTrue(leaf >= 0 && Double.isFinite(leaf), "seed " + SEED);
        ShutterLoss.syncEdge(pulse, down, open, new Seconds(open.value() / 2))
            .ifPresent(edge -> assertTrue(edge.value() >= leaf - 1e-12, "seed " + SEED));
      }
    }
  }

  @Test
  void fasterThanTheCurtainNoRowSeesTheWholeFrameLit() {
    FlashPulse pulse = new FlashPulse.Cut(new Seconds(0.001));
    assertEquals(
        Optional.empty(),
        ShutterLoss.syncEdge(pulse, Stops.ZERO, new Seconds(0.002), new Seconds(0.003)));
    assertEquals(1, ShutterLoss.litShare(new Seconds(0.004), new Seconds(0.003)));
  }

  /** The table of losses by long burst, derived; traverse 1/250 s, printed times exact. */
  @ParameterizedTest
  @CsvSource({
    "320, 1.20, 1.71",
    "400, 1.39, 1.91",
    "500, 1.61, 2.12",
    "640, 1.84, 2.35",
    "1000, 2.35, 2.86",
    "2000, 3.20, 3.71",
    "4000, 4.12, 4.63",
    "8000, 5.08, 5.59"
  })
  void longBurstsLoseTheDerivedTable(int mark, double ideal, double real) {
    Seconds open = new Seconds(ShutterTime.parse("1/" + mark).seconds());
    Seconds traverse = new Seconds(1.0 / 250);
    assertEquals(ideal, ShutterLoss.longBurst(open, traverse, 1).value(), 0.0051);
    assertEquals(real, ShutterLoss.longBurst(open, traverse, 0.7).value(), 0.0051);
  }
}
