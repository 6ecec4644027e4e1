package lampwright.engine.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ColourTest {

  private static final long SEED = 20261125;

  /**
   * All of table 1 of Sharma, Wu and Dalal, Color Research and Application 30 (2005) 21-30, as
   * quoted in several open test suites; they agree. Pair 14 has hues exactly opposite.
   */
  @ParameterizedTest(name = "pair {0}")
  @CsvSource({
    "1, 50.0000, 2.6772, -79.7751, 50.0000, 0.0000, -82.7485, 2.0425",
    "2, 50.0000, 3.1571, -77.2803, 50.0000, 0.0000, -82.7485, 2.8615",
    "3, 50.0000, 2.8361, -74.0200, 50.0000, 0.0000, -82.7485, 3.4412",
    "4, 50.0000, -1.3802, -84.2814, 50.0000, 0.0000, -82.7485, 1.0000",
    "5, 50.0000, -1.1848, -84.8006, 50.0000, 0.0000, -82.7485, 1.0000",
    "6, 50.0000, -0.9009, -85.5211, 50.0000, 0.0000, -82.7485, 1.0000",
    "7, 50.0000, 0.0000, 0.0000, 50.0000, -1.0000, 2.0000, 2.3669",
    "8, 50.0000, -1.0000, 2.0000, 50.0000, 0.0000, 0.0000, 2.3669",
    "9, 50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0009, 7.1792",
    "10, 50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0010, 7.1792",
    "11, 50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0011, 7.2195",
    "12, 50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0012, 7.2195",
    "13, 50.0000, -0.0010, 2.4900, 50.0000, 0.0009, -2.4900, 4.8045",
    "14, 50.0000, -0.0010, 2.4900, 50.0000, 0.0010, -2.4900, 4.8045",
    "15, 50.0000, -0.0010, 2.4900, 50.0000, 0.0011, -2.4900, 4.7461",
    "16, 50.0000, 2.5000, 0.0000, 50.0000, 0.0000, -2.5000, 4.3065",
    "17, 50.0000, 2.5000, 0.0000, 73.0000, 25.0000, -18.0000, 27.1492",
    "18, 50.0000, 2.5000, 0.0000, 61.0000, -5.0000, 29.0000, 22.8977",
    "19, 50.0000, 2.5000, 0.0000, 56.0000, -27.0000, -3.0000, 31.9030",
    "20, 50.0000, 2.5000, 0.0000, 58.0000, 24.0000, 15.0000, 19.4535",
    "21, 50.0000, 2.5000, 0.0000, 50.0000, 3.1736, 0.5854, 1.0000",
    "22, 50.0000, 2.5000, 0.0000, 50.0000, 3.2972, 0.0000, 1.0000",
    "23, 50.0000, 2.5000, 0.0000, 50.0000, 1.8634, 0.5757, 1.0000",
    "24, 50.0000, 2.5000, 0.0000, 50.0000, 3.2592, 0.3350, 1.0000",
    "25, 60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644",
    "26, 63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630",
    "27, 61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731",
    "28, 35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645",
    "29, 22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373",
    "30, 36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146",
    "31, 90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441",
    "32, 90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381",
    "33, 6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377",
    "34, 2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082"
  })
  void colourDifferenceAgreesWithSharmaWuAndDalal(
      int pair, double l1, double a1, double b1, double l2, double a2, double b2, double expected) {
    Lab one = new Lab(l1, a1, b1);
    Lab other = new Lab(l2, a2, b2);
    assertEquals(expected, one.differenceTo(other), 5e-5, "pair " + pair);
    assertEquals(expected, other.differenceTo(one), 5e-5, "pair " + pair + " the other way");
  }

  @Test
  void colourDifferenceIsZeroToItselfAndTheSameBothWays() {
    Random random = new Random(SEED);
    for (int i = 0; i < 20_000; i++) {
      Lab one = lab(random);
      Lab other = lab(random);
      assertEquals(0, one.differenceTo(one), "seed " + SEED);
      double there = one.differenceTo(other);
      assertTrue(there > 0, "seed " + SEED);
      assertEquals(there, other.differenceTo(one), 1e-9 * there, "seed " + SEED);
    }
  }

  private static Lab lab(Random random) {
    return new Lab(
        random.nextDouble(0, 100), random.nextDouble(-120, 120), random.nextDouble(-120, 120));
  }

  @Test
  void cubeRootAgreesWithTheLibraryWithinTwoUnitsInTheLastPlaceAndKeepsTheSign() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200_000; i++) {
      double value = Math.scalb(random.nextDouble(1, 2), random.nextInt(-1020, 1020));
      double library = Math.cbrt(value);
      assertEquals(library, CubeRoot.of(value), 2 * Math.ulp(library), "of " + value);
      assertEquals(-CubeRoot.of(value), CubeRoot.of(-value));
    }
    assertEquals(0, CubeRoot.of(0));
    assertEquals(2, CubeRoot.of(8), 1e-15);
    assertEquals(-3, CubeRoot.of(-27), 1e-15);
  }

  @Test
  void all256SignalsComeBackFromTheirLightAndRise() {
    double before = -1;
    for (int signal = 0; signal < 256; signal++) {
      double light = Srgb.linear(signal / 255.0);
      assertTrue(light > before, "signal " + signal);
      before = light;
      assertEquals(signal / 255.0, Srgb.signal(light), 1e-7, "signal " + signal);
      assertEquals(signal, Math.round(Srgb.signal(light) * 255));
    }
    assertEquals(0, Srgb.linear(0));
    assertEquals(1, Srgb.linear(1));
    assertEquals(1, Srgb.signal(1), 1e-15);
  }

  /** The formula of IEC 61966-2-1 with the library's own power function. */
  @Test
  void lightOfASignalAgreesWithTheLibrarysPower() {
    for (int i = 0; i <= 10_000; i++) {
      double signal = i / 10_000.0;
      double expected =
          signal <= 0.04045 ? signal / 12.92 : Math.pow((signal + 0.055) / 1.055, 2.4);
      assertEquals(expected, Srgb.linear(signal), 1e-15);
    }
  }

  /** Whatever is white has no colour: the four-digit matrix leaves less than 0.02. */
  @Test
  void greysHaveNoColour() {
    for (int signal = 0; signal < 256; signal++) {
      Lab grey = Srgb.ofBytes(signal, signal, signal).toLab();
      assertEquals(0, grey.chroma(), 0.02, "grey " + signal);
      Oklab even = Srgb.ofBytes(signal, signal, signal).toLinear().toXyz().toOklab();
      assertEquals(0, even.chroma(), 2e-3, "grey " + signal);
    }
    assertEquals(100, Srgb.ofBytes(255, 255, 255).toLab().lightness(), 1e-9);
    assertEquals(0, Srgb.ofBytes(0, 0, 0).toLab().lightness(), 1e-12);
  }

  @Test
  void bothWhitesAreTheirOwnWhite() {
    for (WhitePoint white : WhitePoint.values()) {
      Lab lab = white.toXyz().toLab(white);
      assertEquals(100, lab.lightness(), 1e-12);
      assertEquals(0, lab.chroma(), 1e-12);
    }
    // CIE 15: D65 is 0.95047, 1, 1.08883 and D50 0.96422, 1, 0.82521; from memory, four digits.
    assertEquals(0.9505, WhitePoint.D65.toXyz().x(), 1e-4);
    assertEquals(1.0888, WhitePoint.D65.toXyz().z(), 3e-4);
    assertEquals(0.9642, WhitePoint.D50.toXyz().x(), 2e-4);
    assertEquals(0.8252, WhitePoint.D50.toXyz().z(), 2e-4);
  }

  @Test
  void lightnessIsSmoothWhereTheCubeRootBegins() {
    double knee = 216.0 / 24389;
    assertEquals(8, Xyz.lightness(knee), 1e-9);
    assertEquals(8, Xyz.lightness(knee * (1 + 1e-12)), 1e-9);
  }

  @Test
  void whatNoScreenShowsIsCutOff() {
    LinearRgb outside = new LinearRgb(1.2, -0.1, 0.5);
    assertFalse(outside.isShowable());
    assertEquals(1, outside.toSrgb().red(), 1e-15);
    assertEquals(0, outside.toSrgb().green());
    assertEquals(Srgb.signal(0.5), outside.toSrgb().blue());
    assertTrue(new LinearRgb(0, 1, 0.5).isShowable());
    assertThrows(IllegalArgumentException.class, () -> new Srgb(1.01, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> Srgb.ofBytes(256, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> Srgb.linear(-0.1));
    assertThrows(IllegalArgumentException.class, () -> Srgb.signal(1.1));
  }

  @Test
  void huesGoRoundFromRedOverYellow() {
    assertEquals(0, new Lab(50, 10, 0).hue().value());
    assertEquals(90, new Lab(50, 0, 10).hue().value());
    assertEquals(180, new Lab(50, -10, 0).hue().value());
    assertEquals(270, new Lab(50, 0, -10).hue().value());
    assertEquals(0, new Lab(50, 0, 0).hue().value());
    assertEquals(0, new Lab(50, 10, -1e-20).hue().value(), "a hair below 0 is not a full turn");
  }
}
