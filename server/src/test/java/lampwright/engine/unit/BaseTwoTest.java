package lampwright.engine.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class BaseTwoTest {

  private static final long SEED = 20261124;

  @Test
  void wholeStopsAreExactOverTheWholeRangeOfDoubles() {
    for (int n = -1074; n <= 1023; n++) {
      double exact = Math.scalb(1.0, n);
      assertEquals(exact, BaseTwo.power(n), "2^" + n);
      assertEquals(n, BaseTwo.log(exact), "log2 of 2^" + n);
    }
  }

  @Test
  void halfStopsAreCorrectlyRounded() {
    for (int n = -100; n <= 100; n++) {
      assertEquals(Math.scalb(Math.sqrt(0.5), n + 1), BaseTwo.power(n + 0.5));
    }
  }

  @Test
  void agreesWithTheLibraryWithinTwoUnitsInTheLastPlace() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100_000; i++) {
      double exponent = random.nextDouble(-1000, 1000);
      double library = Math.pow(2, exponent);
      assertEquals(library, BaseTwo.power(exponent), 2 * Math.ulp(library), "seed " + SEED);
    }
  }

  @Test
  void logarithmUndoesThePower() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100_000; i++) {
      double exponent = random.nextDouble(-1000, 1000);
      double back = BaseTwo.log(BaseTwo.power(exponent));
      assertEquals(exponent, back, 1e-15 * (1 + Math.abs(exponent)), "seed " + SEED);
    }
  }

  @Test
  void logarithmIsExactCloseToOne() {
    // log2(1 + x) = x / ln 2 (1 - x / 2 + ...), with x = 2^-40.
    double x = Math.scalb(1.0, -40);
    double expected = x / Math.log(2) * (1 - x / 2);
    assertEquals(expected, BaseTwo.log(1 + x), 1e-15 * expected);
  }

  @Test
  void beyondTheRangeOfDoublesItIsZeroOrInfinite() {
    assertEquals(Double.POSITIVE_INFINITY, BaseTwo.power(1024));
    assertEquals(Double.POSITIVE_INFINITY, BaseTwo.power(1e300));
    assertEquals(0, BaseTwo.power(-1076));
    assertEquals(0, BaseTwo.power(-1e300));
  }

  @Test
  void noLogarithmOfNothing() {
    for (double value : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException refusal =
          assertThrows(IllegalArgumentException.class, () -> BaseTwo.log(value));
      assertTrue(refusal.toString().contains(": Ratio ("), refusal::toString);
    }
  }
}
