package lampwright.engine.lens;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import org.junit.jupiter.api.Test;

final class LensTest {

  private static final long SEED = 20261124;

  /** 50 mm on a back of about 49 by 37 mm frames roughly like 35 mm: common practice, no source. */
  @Test
  void fiftyOnALargeBackFramesLikeThirtyFive() {
    SensorFormat back = SensorFormat.of(49, 37);
    for (CropBasis basis : CropBasis.values()) {
      double equivalent = back.equivalentFocal(new Millimetres(50), basis).value();
      assertTrue(equivalent >= 32 && equivalent <= 37, basis + ": " + equivalent);
    }
  }

  @Test
  void uprightFramesHaveTheSameCrop() {
    for (CropBasis basis : CropBasis.values()) {
      assertEquals(SensorFormat.of(54, 40).crop(basis), SensorFormat.of(40, 54).crop(basis));
      assertEquals(1, SensorFormat.FULL_FRAME.crop(basis));
    }
  }

  @Test
  void focalLengthsComeBackFromAnotherFormat() {
    SensorFormat large = SensorFormat.of(53.4, 40);
    SensorFormat small = SensorFormat.FULL_FRAME;
    for (CropBasis basis : CropBasis.values()) {
      Millimetres there = large.focalOn(small, new Millimetres(80), basis);
      assertEquals(80, small.focalOn(large, there, basis).value(), 1e-12);
    }
    FNumber same = large.fNumberOn(small, FNumber.parse("2.8"));
    assertEquals(large.equivalentFNumber(FNumber.parse("2.8")).value(), same.value(), 1e-12);
  }

  /**
   * At near and far limit the blur disc is the circle of confusion: two derivations, one answer.
   */
  @Test
  void limitsOfSharpnessBlurToTheCircle() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      FocusedLens lens =
          FocusedLens.of(
              random.nextDouble(20, 200), random.nextDouble(1, 32), random.nextDouble(0.6, 30));
      Millimetres circle = new Millimetres(random.nextDouble(0.01, 0.05));
      DepthOfField depth = lens.depthOfField(circle);
      String about = lens + ", seed " + SEED;
      assertEquals(circle.value(), lens.blurDisc(depth.near()).value(), 1e-9, about);
      depth
          .far()
          .ifPresent(far -> assertEquals(circle.value(), lens.blurDisc(far).value(), 1e-9, about));
      assertTrue(depth.contains(lens.focus()), about);
      assertEquals(depth.far().isEmpty(), lens.focus().compareTo(depth.hyperfocal()) >= 0, about);
    }
  }

  @Test
  void fromTheHyperfocalDistanceAllIsSharpFromHalfOfIt() {
    FocusedLens any = FocusedLens.of(50, 8, 3);
    Millimetres circle = new Millimetres(0.03);
    Metres hyperfocal = any.hyperfocal(circle);
    DepthOfField depth = FocusedLens.of(50, 8, hyperfocal.value()).depthOfField(circle);
    assertTrue(depth.far().isEmpty());
    assertEquals(hyperfocal.value() / 2, depth.near().value(), 1e-9);
    assertTrue(depth.timeInside(new MetresPerSecond(3)).isEmpty());
  }

  @Test
  void aFrameFilledFromTheFramingDistanceIsTheField() {
    Millimetres focal = new Millimetres(85);
    Metres distance = FocusedLens.framingDistance(focal, new Metres(1.8), new Millimetres(24));
    FocusedLens lens = new FocusedLens(focal, FNumber.parse("8"), distance);
    assertEquals(1.8, lens.field(new Millimetres(24)).value(), 1e-12);
  }

  @Test
  void lensesFocusBeyondTheirFocalLength() {
    assertThrows(IllegalArgumentException.class, () -> FocusedLens.of(50, 8, 0.05));
    assertThrows(IllegalArgumentException.class, () -> FocusedLens.of(0, 8, 5));
  }

  @Test
  void movementAlongTheLineOfSightDoesNotBlur() {
    FocusedLens lens = FocusedLens.of(50, 8, 10);
    MetresPerSecond speed = new MetresPerSecond(8);
    double across = Movement.across(lens, speed).imageSpeed().value();
    for (double angle : new double[] {0, 180}) {
      Movement along = new Movement(lens, speed, new Degrees(angle));
      assertTrue(along.imageSpeed().value() < 1e-12 * across);
    }
    assertEquals(
        across / 2,
        new Movement(lens, speed, new Degrees(150)).imageSpeed().value(),
        1e-12 * across);
    Movement still = Movement.across(lens, new MetresPerSecond(0));
    assertThrows(IllegalArgumentException.class, () -> still.longestTimeFor(new Millimetres(0.01)));
  }

  /** A flat-out run is held by the flash and not by 1/125 s: common practice, no source. */
  @Test
  void flashHoldsARunThatTheShutterDoesNot() {
    FocusedLens lens = FocusedLens.of(50, 8, 10);
    Micrometres pitch = SensorFormat.FULL_FRAME.pixelPitch(8192);
    for (double speed = 6; speed <= 9; speed++) {
      Movement run = Movement.across(lens, new MetresPerSecond(speed));
      double flash = run.blurPixels(new Seconds(1.0 / 2000), pitch);
      double ambient = run.blurPixels(new Seconds(1.0 / 128), pitch);
      assertTrue(flash < 6 && ambient > 10 * flash, flash + " and " + ambient);
    }
    // Ambient one stop under is no small ghost: a third of the light.
    assertEquals(1.0 / 3, Movement.ghostFraction(new LuxSeconds(10), new LuxSeconds(20)), 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () -> Movement.ghostFraction(LuxSeconds.NONE, LuxSeconds.NONE));
  }

  @Test
  void blurIsStatedInThreeWays() {
    Movement run = Movement.across(FocusedLens.of(50, 8, 10), new MetresPerSecond(8));
    Seconds time = new Seconds(0.001);
    double mm = run.blur(time).value();
    assertEquals(mm / 24, run.blurShare(time, SensorFormat.FULL_FRAME), 1e-15);
    assertEquals(mm * 1000 / 4, run.blurPixels(time, new Micrometres(4)), 1e-12);
    assertEquals(0.001, run.longestTimeFor(new Millimetres(mm)).value(), 1e-15);
  }
}
