package lampwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FusedMultiplyAddTest {

  private static final long SEED = 20261127;

  /** The JDK's is the processor's own, or exact arithmetic. */
  @Test
  void roundsOnceAsTheJdkDoes() {
    Random dice = new Random(SEED);
    for (int i = 0; i < 300_000; i++) {
      double a = any(dice);
      double b = any(dice);
      check(a, b, any(dice));
      double ulps = dice.nextInt(-3, 4) * Math.ulp(a * b) / 2;
      check(a, b, -(a * b) + ulps);
    }
    check(0, 3, -0.5);
    check(-1.5, 2, 3);
    check(0.1, 10, -1);
  }

  private static double any(Random dice) {
    double coarse = dice.nextInt(1 << 10) / 16.0;
    double size = StrictMath.pow(10, dice.nextInt(-10, 11));
    return dice.nextInt(4) == 0 ? coarse : dice.nextGaussian() * size;
  }

  private static void check(double a, double b, double c) {
    assertEquals(
        Math.fma(a, b, c),
        FusedMultiplyAdd.of(a, b, c),
        () -> a + " * " + b + " + " + c + ", seed " + SEED);
  }
}
