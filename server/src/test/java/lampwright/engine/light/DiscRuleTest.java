package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.61, quoted from memory. */
final class DiscRuleTest {

  /**
   * Closed form of the mean of x^a y^b over the unit disc: 2 / (a + b + 2) times (a-1)!! (b-1)!! /
   * (a+b)!!.
   */
  private static double mean(int a, int b) {
    return a % 2 == 1 || b % 2 == 1
        ? 0
        : 2.0 / (a + b + 2) * doubled(a - 1) * doubled(b - 1) / doubled(a + b);
  }

  private static double doubled(int n) {
    return n <= 0 ? 1 : n * doubled(n - 2);
  }

  private static double mean(DiscRule rule, int a, int b) {
    double sum = 0;
    for (int i = 0; i < rule.order(); i++) {
      sum += rule.weight(i) * Math.pow(rule.x(i), a) * Math.pow(rule.y(i), b);
    }
    return sum;
  }

  private static void isExactTo(int degree, DiscRule rule) {
    for (int a = 0; a <= degree; a++) {
      for (int b = 0; a + b <= degree; b++) {
        assertEquals(mean(a, b), mean(rule, a, b), 1e-14, "x^" + a + " y^" + b);
      }
    }
    assertTrue(Math.abs(mean(degree + 1, 0) - mean(rule, degree + 1, 0)) > 1e-6);
  }

  @Test
  void sevenPointsAreExactToTheFifthDegreeAndNoFurther() {
    isExactTo(5, DiscRule.SEVEN);
  }

  @Test
  void twentyOnePointsAreExactToTheNinthDegreeAndNoFurther() {
    isExactTo(9, DiscRule.TWENTY_ONE);
  }
}
