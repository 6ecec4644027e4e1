package lampwright.engine.lens;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import org.junit.jupiter.api.Test;

final class ImageMotionTest {

  /** A simulated projection: the point is moved for a microsecond and projected twice. */
  @Test
  void theImageMovesAsASimulatedProjectionDoes() {
    for (int seed = 0; seed < 10_000; seed++) {
      Random random = new Random(seed);
      double v = 20 + 200 * random.nextDouble();
      double z = 0.5 + 30 * random.nextDouble();
      double x = z * (random.nextDouble() - 0.5);
      double y = z * (random.nextDouble() - 0.5);
      double vx = 20 * (random.nextDouble() - 0.5);
      double vy = 20 * (random.nextDouble() - 0.5);
      double vz = 20 * (random.nextDouble() - 0.5);
      double t = 1e-6;
      double dx = v * ((x + vx * t) / (z + vz * t) - (x - vx * t) / (z - vz * t));
      double dy = v * ((y + vy * t) / (z + vz * t) - (y - vy * t) / (z - vz * t));
      double simulated = Math.sqrt(dx * dx + dy * dy);
      ImageMotion motion = new ImageMotion(new Millimetres(v), new Metres(z), x, y, vx, vy, vz);
      double blur = motion.blur(new Seconds(2 * t)).value();
      assertEquals(simulated, blur, 1e-8 + 1e-6 * simulated, "seed " + seed);
    }
  }

  /** motion.image_speed_mm_s.01 of the reference: 8 m/s across at 10 m, 50 mm. */
  @Test
  void acrossTheFocusedDistanceItIsMagnificationTimesSpeed() {
    FocusedLens lens = FocusedLens.of(50, 8, 10);
    ImageMotion motion = ImageMotion.across(lens, new MetresPerSecond(8));
    assertEquals(40.201005, motion.speed().value(), 8e-5);
    assertEquals(
        new Movement(lens, new MetresPerSecond(8), new Degrees(90)).imageSpeed().value(),
        motion.speed().value(),
        1e-9);
  }

  /** motion.approach_image_speed_mm_s.01: 18 mm from the middle, 6 m/s towards, 8 m away. */
  @Test
  void headOnTheImageGrowsFromTheMiddle() {
    double v = 50;
    ImageMotion motion =
        new ImageMotion(new Millimetres(v), new Metres(8), 18 / v * 8, 0, 0, 0, -6);
    assertEquals(13.5, motion.approaching().value(), 2.7e-5);
    assertEquals(13.5, motion.speed().value(), 2.7e-5);
    assertEquals(0, motion.lateral().value());
  }

  @Test
  void aPointBehindTheLensIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new ImageMotion(new Millimetres(50), new Metres(0), 0, 0, 1, 0, 0));
  }
}
