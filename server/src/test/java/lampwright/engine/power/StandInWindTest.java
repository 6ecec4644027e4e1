package lampwright.engine.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.SquareMetres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StandInWindTest {

  private static final long SEED = 20261125;

  private static StandInWind box(double heightM, double massKg) {
    return StandInWind.of(
        SquareMetres.of(1.08),
        Metres.of(heightM),
        new Legs(3, Metres.of(0.55)),
        Kilograms.of(massKg));
  }

  private static Wind wind(double metresPerSecond) {
    return Wind.steady(MetresPerSecond.of(metresPerSecond));
  }

  /** REFERENCE 17a, an invented example computed independently. */
  @Test
  void theKeyOnTheSlipwayAgreesWithTheWorkedExample() {
    StandInWind key = box(3.4, 6);
    assertEquals(21.17, key.force(wind(5)).value(), 0.005);
    assertEquals(71.97, key.moment(wind(5)).value(), 0.005);
    assertEquals(0.275, key.legs().tippingRadius().value(), 1e-12);
    assertEquals(40.03, key.massNeeded(wind(5), 1.5).value(), 0.005);
    assertEquals(34.0, key.ballast(wind(5), 1.5).value(), 0.05);
    assertEquals(2.37, key.speedHeld(wind(5), 1).value(), 0.005);
    assertEquals(Beaufort.GENTLE_BREEZE, wind(5).force());
  }

  /** The column of forces of REFERENCE 12 for a box of 0.9 by 1.2 m, at each upper limit. */
  @ParameterizedTest
  @CsvSource({
    "1, 1.5, 1.9",
    "2, 3.3, 9.2",
    "3, 5.4, 24.7",
    "4, 7.9, 52.8",
    "5, 10.7, 96.9",
    "6, 13.8, 161.2",
    "7, 17.1, 247.6",
    "8, 20.7, 362.8"
  })
  void forceOnABoxAgreesWithTheTable(int number, double upperMs, double newtons) {
    assertEquals(newtons, box(2.5, 8).force(wind(upperMs)).value(), 0.05);
    assertEquals(number, wind(upperMs).force().number());
  }

  /** The push may come from anywhere: the weakest direction is what counts. */
  @Test
  void tippingRadiusIsTheLeastReachOfTheFeetOverAllDirections() {
    for (int count = 3; count <= 8; count++) {
      Legs legs = new Legs(count, Metres.of(0.6));
      double least = Double.POSITIVE_INFINITY;
      // It tips over a line between two feet once the centre is past it.
      int steps = 7200;
      for (int i = 0; i < steps; i++) {
        double direction = 2 * Math.PI * i / steps;
        least = Math.min(least, reach(count, 0.6, direction));
      }
      assertEquals(least, legs.tippingRadius().value(), 1e-6, count + " legs");
    }
  }

  /** Distance from the centre to where a ray leaves the polygon of the feet. */
  private static double reach(int count, double circleM, double direction) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double a = 2 * Math.PI * i / count;
      double b = 2 * Math.PI * (i + 1) / count;
      double ax = circleM * Math.cos(a);
      double ay = circleM * Math.sin(a);
      double ex = circleM * Math.cos(b) - ax;
      double ey = circleM * Math.sin(b) - ay;
      double dx = Math.cos(direction);
      double dy = Math.sin(direction);
      double cross = dx * ey - dy * ex;
      double along = (ax * ey - ay * ex) / cross;
      double onEdge = (ax * dy - ay * dx) / cross;
      if (along > 0 && onEdge >= -1e-9 && onEdge <= 1 + 1e-9) {
        nearest = Math.min(nearest, along);
      }
    }
    return nearest;
  }

  @Test
  void moreWindHeightAndFaceNeedMoreAndWiderLegsNeedLess() {
    Random random = new Random(SEED);
    for (int i = 0; i < 5000; i++) {
      double area = random.nextDouble(0.05, 4);
      double height = random.nextDouble(0.3, 6);
      double circle = random.nextDouble(0.2, 1.5);
      double speed = random.nextDouble(0.5, 25);
      double more = random.nextDouble(1.001, 2);
      int legs = random.nextInt(3, 6);
      double base = needed(area, height, circle, legs, speed);
      String where = "seed " + SEED + ", trial " + i;
      assertTrue(needed(area, height, circle, legs, speed * more) > base, where);
      assertTrue(needed(area, height * more, circle, legs, speed) > base, where);
      assertTrue(needed(area * more, height, circle, legs, speed) > base, where);
      assertTrue(needed(area, height, circle * more, legs, speed) < base, where);
      assertTrue(needed(area, height, circle, legs + 1, speed) < base, where);
    }
  }

  private static double needed(
      double areaM2, double heightM, double circleM, int legs, double speedMs) {
    return StandInWind.of(
            SquareMetres.of(areaM2),
            Metres.of(heightM),
            new Legs(legs, Metres.of(circleM)),
            Kilograms.of(5))
        .massNeeded(Wind.of(MetresPerSecond.of(speedMs), 1.5), 1.5)
        .value();
  }

  @Test
  void atTheSpeedItHoldsTheMassIsJustEnough() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double mass = random.nextDouble(2, 60);
      double safety = random.nextDouble(1, 3);
      double gusts = random.nextDouble(1, 2);
      StandInWind stand = box(random.nextDouble(0.5, 4), mass);
      MetresPerSecond held = stand.speedHeld(Wind.of(MetresPerSecond.of(7), gusts), safety);
      double needed = stand.massNeeded(Wind.of(held, gusts), safety).value();
      assertEquals(mass, needed, 1e-9 * mass, "seed " + SEED);
    }
  }

  @Test
  void gustsOfTwiceTheMeanPushFourTimesAsHard() {
    StandInWind stand = box(2.5, 8);
    double steady = stand.force(wind(6)).value();
    assertEquals(4 * steady, stand.force(Wind.of(MetresPerSecond.of(6), 2)).value(), 1e-9);
  }

  @Test
  void withoutWindOrWithEnoughMassNoBallastIsAskedFor() {
    assertEquals(0, box(2.5, 8).ballast(wind(0), 2).value());
    assertEquals(0, box(2.5, 200).ballast(wind(8), 1.5).value());
  }

  /** Limits as quoted from Beaufort tables: each force begins at its own. */
  @Test
  void eachForceBeginsAtItsLimitAndHoldsItsTypicalSpeed() {
    for (Beaufort force : Beaufort.values()) {
      assertEquals(force, Beaufort.of(force.lowest()));
      assertEquals(force, Beaufort.ofNumber(force.number()));
      assertEquals(force, Beaufort.of(force.typical()), "0.836 B^1.5 lies within the force");
      if (force != Beaufort.CALM) {
        assertEquals(
            force.number() - 1,
            Beaufort.of(MetresPerSecond.of(force.lowest().value() - 0.01)).number());
      }
    }
    assertEquals("force 5, fresh breeze", Beaufort.FRESH_BREEZE.toString());
  }

  @Test
  void workingsSayWhatWasGivenAndWhereTheDragIsFrom() {
    StandInWind stand = box(3.4, 6);
    Working ballast = stand.ballastWorking(wind(5), 1.5);
    assertEquals(stand.ballast(wind(5), 1.5).value(), ballast.value());
    assertTrue(ballast.toString().contains("drag of a flat plate = 1.28 [nasa-drag]"));
    Working held = stand.speedHeldWorking(wind(5), 1.5);
    assertEquals(stand.speedHeld(wind(5), 1.5).value(), held.value());
    assertEquals(Source.DERIVED, held.source());
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Legs(2, Metres.of(0.5)));
    assertThrows(IllegalArgumentException.class, () -> new Legs(3, Metres.of(0)));
    assertThrows(IllegalArgumentException.class, () -> Wind.of(MetresPerSecond.of(5), 0.9));
    assertThrows(IllegalArgumentException.class, () -> Beaufort.ofNumber(13));
    assertThrows(IllegalArgumentException.class, () -> box(0, 8).speedHeld(wind(5), 1));
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> box(2, 8).ballast(wind(5), 0.5));
    assertTrue(refusal.toString().endsWith("Safety factor (0.5) must be from 1 to 10."));
  }
}
