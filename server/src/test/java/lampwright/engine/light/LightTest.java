package lampwright.engine.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LightTest {

  private static final long SEED = 20261124;
  private static final EmittingFace BOX =
      new EmittingFace.Rectangle(new Metres(0.9), new Metres(1.2));

  @ParameterizedTest
  @CsvSource({
    "0, -1, 0, 0, 0",
    "1, 0, 0, 90, 0",
    "-1, 0, 0, -90, 0",
    "0, 1, 0, 180, 0",
    "1, -1, 0, 45, 0",
    "0, -1, 1, 0, 45",
    "0, 0, 2, 0, 90",
    "0, 0, -2, 0, -90"
  })
  void directionsAreMeasuredFromTheCameraToItsRight(
      double x, double y, double z, double azimuth, double elevation) {
    Point target = Point.of(0.5, 3, 1.5);
    Point light = Point.of(0.5 + x, 3 + y, 1.5 + z);
    Direction onAxis = Direction.of(target, light);
    assertEquals(azimuth, onAxis.azimuth().value(), 1e-12);
    assertEquals(elevation, onAxis.elevation().value(), 1e-12);
    Direction fromCamera = Direction.of(target, light, Point.of(0.5, -7, 1.2));
    assertEquals(azimuth, fromCamera.azimuth().value(), 1e-12);
  }

  @Test
  void turningTheWholeSceneChangesNoDirection() {
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      Point target = Point.of(random.nextGaussian(), random.nextGaussian(), 1.5);
      Point light = Point.of(random.nextGaussian() * 3, random.nextGaussian() * 3, 2.5);
      Point camera = Point.of(random.nextGaussian(), -6, 1.2);
      double angle = random.nextDouble(Math.PI * 2);
      Direction plain = Direction.of(target, light, camera);
      Direction turned = Direction.of(turn(target, angle), turn(light, angle), turn(camera, angle));
      double apart = turned.azimuth().minus(plain.azimuth()).toHalfTurns().value();
      assertEquals(0, Math.abs(apart) > 179 ? 360 - Math.abs(apart) : apart, 1e-9);
      assertEquals(plain.elevation().value(), turned.elevation().value(), 1e-9);
    }
  }

  private static Point turn(Point p, double angle) {
    return Point.of(
        p.x() * Math.cos(angle) - p.y() * Math.sin(angle),
        p.x() * Math.sin(angle) + p.y() * Math.cos(angle),
        p.z());
  }

  @Test
  void aLightInItsTargetHasNoDirection() {
    assertThrows(
        IllegalArgumentException.class, () -> Direction.of(Point.of(1, 1, 1), Point.of(1, 1, 1)));
  }

  @Test
  void lightFromBehindDoesNotReachAReceiver() {
    Point subject = Point.of(0, 0, 1.6);
    UnitVector normal = UnitVector.between(subject, Point.of(0, -7, 1.6));
    assertEquals(0, UnitVector.between(subject, Point.of(0, 3, 1.6)).receivedBy(normal));
    assertEquals(
        Math.sqrt(0.5),
        UnitVector.between(subject, Point.of(2, -2, 1.6)).receivedBy(normal),
        1e-12);
    assertEquals(180, normal.angleTo(normal.reversed()).value(), 1e-12);
  }

  @Test
  void guideNumbersComeBackFromEverythingTheyTurnInto() {
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      GuideNumber number = new GuideNumber(random.nextDouble(5, 120));
      Iso iso = new Iso(random.nextDouble(25, 3200));
      Stops down = new Stops(random.nextDouble(0, 8));
      Metres distance = new Metres(random.nextDouble(0.5, 20));
      double gn = number.metresAtIso100();
      assertEquals(gn, GuideNumber.ofFeet(number.toFeet()).metresAtIso100(), 1e-10);
      assertEquals(gn, GuideNumber.ofMetresAt(number.toMetresAt(iso), iso).metresAtIso100(), 1e-10);
      assertEquals(
          gn,
          GuideNumber.ofCandelaSeconds(
                  number.toCandelaSeconds(MeterConstant.DOME), MeterConstant.DOME)
              .metresAtIso100(),
          1e-10);
      FNumber reading = number.fNumberAt(distance, iso, down);
      assertEquals(gn, GuideNumber.ofReading(reading, distance, iso, down).metresAtIso100(), 1e-10);
      assertEquals(distance.value(), number.distanceFor(reading, iso, down).value(), 1e-10);
    }
  }

  @Test
  void standardReflectorReadingAndGuideNumberAreTheSameHead() {
    MeteredReading reading =
        new MeteredReading(
            FNumber.parse("11"),
            Iso.parse("200"),
            new Metres(2.5),
            new Stops(3),
            MeterConstant.FLAT);
    ModifierEffect box = ModifierEffect.of(BOX, new Stops(2.2), new Metres(2));
    Metres distance = new Metres(3);
    double byReading = HeadOutput.ofStandardReflector(reading).exposureAt(distance, box).value();
    double byNumber =
        HeadOutput.of(new GuideNumber(56.568542494924)).exposureAt(distance, box).value();
    assertEquals(byNumber, byReading, 1e-9 * byNumber);
  }

  @Test
  void aReadingRescaledToItsOwnPlaceIsItself() {
    MeteredReading reading =
        MeteredReading.atFullPower(FNumber.parse("8"), Iso.HUNDRED, new Metres(1.5));
    assertEquals(8, reading.rescaled(new Metres(1.5), BOX, Stops.ZERO, Iso.HUNDRED).value(), 1e-12);
    assertEquals("f/8 at 1.5 m, ISO 100, full power", reading.toString());
  }

  /** A head's light scales by power, distance, modifier and angle, each by itself. */
  @Test
  void fourFactorsActIndependently() {
    LightAtTarget light =
        LightAtTarget.of(
            HeadOutput.of(new GuideNumber(64)),
            ModifierEffect.of(BOX, new Stops(2.2), new Metres(2)),
            new Metres(3));
    LuxSeconds full = light.atFullPower();
    assertEquals(-1, light.at(Stops.ONE).stopsOver(full).value(), 1e-12);
    assertEquals(-1, light.withReceptor(tilted(60)).atFullPower().stopsOver(full).value(), 1e-12);
    assertEquals(
        -0.5,
        light
            .withGel(new Gel(new Stops(0.5), new Mired(131)))
            .atFullPower()
            .stopsOver(full)
            .value(),
        1e-12);
    assertEquals(
        BOX.change(new Metres(3), new Metres(4)).value(),
        light.withDistance(new Metres(4)).atFullPower().stopsOver(full).value(),
        1e-12);
    Stops down = light.stopsDownFor(new LuxSeconds(20)).orElseThrow();
    assertEquals(20, light.at(down).value(), 1e-12);
    assertEquals(
        Optional.empty(), light.withReceptor(tilted(180)).stopsDownFor(new LuxSeconds(20)));
  }

  @Test
  void workingEndsInTheReadingAndHoldsEverySource() {
    LightAtTarget light =
        LightAtTarget.of(
            HeadOutput.of(new GuideNumber(64)),
            ModifierEffect.of(BOX, new Stops(2.2), new Metres(2)),
            new Metres(3));
    Working working = light.readingWorking("key", new Stops(1.8), Iso.HUNDRED, MeterConstant.FLAT);
    assertEquals(
        light.readingAt(new Stops(1.8), Iso.HUNDRED, MeterConstant.FLAT).value(), working.value());
    String text = working.toString();
    for (String key : List.of("iso-2720", "guide-number", "howell", "given", "derived")) {
      assertTrue(text.contains("[" + key + "]"), text);
    }
    Working wanted = Working.given("wanted", 20, "lx·s");
    assertEquals(
        light.stopsDownFor(new LuxSeconds(20)).orElseThrow().value(),
        light.powerWorking("key", wanted).orElseThrow().value());
    assertEquals(Optional.empty(), light.withReceptor(tilted(180)).powerWorking("key", wanted));
    Working exposure = light.exposureWorking("key", new Stops(1.8));
    assertEquals(
        2 * exposure.value(),
        LightSum.working("all light", List.of(exposure, exposure)).value(),
        1e-12);
    assertThrows(
        IllegalArgumentException.class, () -> LightSum.working("nonsense", List.of(working)));
  }

  @Test
  void ratiosAreNamedBothWays() {
    LightingRatio ratio = LightingRatio.of(new LuxSeconds(20), new LuxSeconds(5));
    assertEquals("5:1 lit to shadow, key 4:1 over fill", ratio.toString());
    assertEquals(2, LightingRatio.ofLitToShadow(5).keyOverFill().value(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> LightingRatio.ofLitToShadow(1));
  }

  @Test
  void gelsInOneHolderAdd() {
    Gel half = new Gel(new Stops(0.5), new Mired(80));
    assertEquals(new Gel(new Stops(1), new Mired(160)), half.plus(half));
    assertEquals(half, half.plus(Gel.NONE));
    assertThrows(IllegalArgumentException.class, () -> Gel.ofTransmission(1.1, Mired.ZERO));
    assertThrows(IllegalArgumentException.class, () -> Gel.ofTransmission(0, Mired.ZERO));
  }

  @Test
  void virtualSourcesRefuseReadingsThatCannotBe() {
    FNumber sixteen = FNumber.parse("16");
    FNumber eight = FNumber.parse("8");
    VirtualSource plain = VirtualSource.ofReadings(sixteen, new Metres(2), eight, new Metres(4));
    assertEquals(0, plain.offset().value(), 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () -> VirtualSource.ofReadings(sixteen, new Metres(2), eight, new Metres(3)));
    assertThrows(
        IllegalArgumentException.class,
        () -> VirtualSource.ofReadings(eight, new Metres(2), sixteen, new Metres(4)));
    assertThrows(
        IllegalArgumentException.class,
        () -> VirtualSource.ofReadings(sixteen, new Metres(4), eight, new Metres(2)));
  }

  @Test
  void patternsNearABoundaryNameBothSides() {
    assertEquals("between loop and Rembrandt", Pattern.named(Direction.of(38, 40)).toString());
    assertEquals("between Rembrandt and loop", Pattern.named(Direction.of(-41, 40)).toString());
    assertEquals("split", Pattern.named(Direction.of(90, 10)).toString());
    assertEquals(
        "between butterfly and flat/on-axis", Pattern.named(Direction.of(0, 22)).toString());
    assertTrue(Pattern.isSoft(new EmittingFace.Disc(new Metres(0.6)).angularSize(new Metres(1.5))));
  }

  /** The boundaries of DEPARTURES.md: each belongs to the zone further from the nose. */
  @ParameterizedTest
  @CsvSource({
    "15, 30, BUTTERFLY, LOOP",
    "40, 30, LOOP, REMBRANDT",
    "40, 10, LOOP, LOW_SIDE",
    "70, 30, REMBRANDT, SPLIT",
    "110, 30, SPLIT, KICKER",
    "150, 30, KICKER, HAIR",
    "150, 10, KICKER, RIM"
  })
  void boundariesBelongToTheFurtherZone(
      double azimuth, double elevation, Pattern before, Pattern from) {
    assertEquals(before, Pattern.of(Direction.of(azimuth - 1e-6, elevation)));
    assertEquals(from, Pattern.of(Direction.of(azimuth, elevation)));
  }

  @Test
  void everyDirectionHasAPatternAlikeLeftAndRight() {
    for (int azimuth = 0; azimuth <= 180; azimuth++) {
      for (int elevation = -90; elevation <= 90; elevation++) {
        Pattern right = Pattern.of(Direction.of(azimuth, elevation));
        assertEquals(right, Pattern.of(Direction.of(-azimuth, elevation)));
        assertTrue(right != Pattern.BACKGROUND);
      }
    }
  }

  /** Light for texture from the side, clear edges from behind: common practice, no source. */
  @Test
  void directionsHaveTheTradesNames() {
    assertEquals(Pattern.SPLIT, Pattern.of(Direction.of(90, 20)));
    assertEquals(Pattern.KICKER, Pattern.of(Direction.of(135, 20)));
    assertEquals(Pattern.RIM, Pattern.of(Direction.of(170, 10)));
    assertEquals(Pattern.SPLIT, Pattern.of(Direction.of(60, 20).fromNose(new Degrees(-30))));
  }

  /** A flat receptor turned so far away from the source of a light at a plain distance. */
  private static Receptor tilted(double degrees) {
    double radians = new Degrees(degrees).toRadians();
    return new Receptor.Flat(UnitVector.of(StrictMath.sin(radians), -StrictMath.cos(radians), 0));
  }
}
