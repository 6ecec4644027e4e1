package lampwright.engine.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class PictureTonesTest {

  private static final long SEED = 20261125;

  private static int grey(int signal) {
    return signal << 16 | signal << 8 | signal;
  }

  private static int[] all(int pixel, int count) {
    int[] pixels = new int[count];
    Arrays.fill(pixels, pixel);
    return pixels;
  }

  @Test
  void anEvenGreyHasNoContrastAndNoColour() {
    PictureTones tones = PictureTones.of(all(grey(119), 50));
    // REFERENCE 13: medium grey 119 is L* 50.03.
    assertEquals(50.03, tones.lightness().mean(), 0.005);
    assertEquals(tones.lightness().mean(), tones.lightness().median(), 1e-9);
    assertEquals(0, tones.lightness().deviation(), 1e-9);
    assertEquals(0, tones.lightness().range(), 1e-9);
    assertEquals(0, tones.lightness().keyIndex());
    assertEquals(Key.MIDDLE, tones.lightness().key());
    assertEquals(0, tones.rmsContrast(), 1e-9);
    assertEquals(0, tones.michelson());
    assertEquals(0, tones.dynamicStops().value());
    assertEquals(Optional.empty(), tones.colour().meanHue());
    assertEquals(0, tones.colour().warmShare());
  }

  @Test
  void blackAloneIsLowKeyAndDividesByNothing() {
    PictureTones tones = PictureTones.of(all(0, 9));
    assertEquals(Key.LOW, tones.lightness().key());
    assertEquals(-1, tones.lightness().keyIndex());
    assertEquals(0, tones.rmsContrast());
    assertEquals(0, tones.michelson());
    assertEquals(0, tones.dynamicStops().value());
  }

  @Test
  void halfBlackHalfWhiteIsAllTheContrastThereIs() {
    int[] pixels = IntStream.range(0, 200).map(i -> i < 100 ? 0 : grey(255)).toArray();
    PictureTones tones = PictureTones.of(pixels);
    assertEquals(50, tones.lightness().mean(), 1e-9);
    assertEquals(50, tones.lightness().deviation(), 1e-9);
    assertEquals(100, tones.lightness().range(), 1e-9);
    assertEquals(0, tones.lightness().keyIndex());
    assertEquals(1, tones.rmsContrast(), 1e-9);
    assertEquals(1, tones.michelson(), 1e-9);
    // Black counts as a thousandth: log2 1000.
    assertEquals(9.9658, tones.dynamicStops().value(), 1e-4);
  }

  @Test
  void aMostlyWhitePictureIsHighKey() {
    int[] pixels = IntStream.range(0, 100).map(i -> i < 30 ? grey(100) : grey(240)).toArray();
    PictureTones tones = PictureTones.of(pixels);
    assertEquals(Key.HIGH, tones.lightness().key());
    assertEquals("high key", tones.lightness().key().tradeName());
    assertEquals(0.7, tones.lightness().keyIndex(), 1e-12);
  }

  /** By hand: five percent of the way over five values is 0.05 times 4 = 0.2 of the first gap. */
  @Test
  void percentilesLieStraightBetweenNeighbours() {
    LightnessTones tones = LightnessTones.of(new double[] {50, 10, 30, 20, 40});
    assertEquals(12, tones.darkest(), 1e-12);
    assertEquals(30, tones.median());
    assertEquals(48, tones.lightest(), 1e-12);
    assertEquals(36, tones.range(), 1e-12);
    LightnessTones even = LightnessTones.of(new double[] {10, 20, 30, 40});
    assertEquals(25, even.median());
  }

  @Test
  void sharesLeaveOutTheLimitsThemselves() {
    LightnessTones tones = LightnessTones.of(new double[] {24.9, 25, 75, 75.1});
    assertEquals(0.25, tones.darkShare());
    assertEquals(0.25, tones.lightShare());
  }

  @Test
  void huesAroundRedAverageToRedAndNotToGreen() {
    double[] a = {StrictMath.cos(Math.toRadians(350)), StrictMath.cos(Math.toRadians(30))};
    double[] b = {StrictMath.sin(Math.toRadians(350)), StrictMath.sin(Math.toRadians(30))};
    ColourTones tones = ColourTones.of(a, b);
    assertEquals(10, tones.meanHue().orElseThrow().value(), 1e-9);
    assertEquals(1, tones.meanChroma(), 1e-12);
    assertEquals(0.5, tones.warmShare(), 1e-12);
  }

  @Test
  void strongerColoursWeighMoreAndOppositesCancel() {
    ColourTones strong = ColourTones.of(new double[] {30, 0}, new double[] {0, 10});
    assertTrue(strong.meanHue().orElseThrow().value() < 45);
    assertEquals(0.25, strong.warmShare(), 1e-12);
    ColourTones opposite = ColourTones.of(new double[] {30, -30}, new double[] {0, 0});
    assertEquals(Optional.empty(), opposite.meanHue());
    assertEquals(30, opposite.meanChroma());
  }

  @Test
  void orangeIsWarmAndBlueIsNot() {
    assertEquals(1, PictureTones.of(all(0xff8000, 3)).colour().warmShare());
    assertEquals(0, PictureTones.of(all(0x2040ff, 3)).colour().warmShare());
  }

  @Test
  void orderAndAlphaOfPixelsDoNotMatter() {
    Random random = new Random(SEED);
    int[] pixels = random.ints(999).map(pixel -> pixel & 0xffffff).toArray();
    int[] sorted = pixels.clone();
    Arrays.sort(sorted);
    int[] opaque = Arrays.stream(pixels).map(pixel -> pixel | 0xff000000).toArray();
    PictureTones tones = PictureTones.of(pixels);
    assertEquals(tones, PictureTones.of(opaque));
    assertEquals(tones.lightness(), PictureTones.of(sorted).lightness(), "seed " + SEED);
    assertEquals(tones.colour().meanChroma(), PictureTones.of(sorted).colour().meanChroma(), 1e-9);
    assertTrue(tones.michelson() <= 1 && tones.rmsContrast() > 0);
  }

  @Test
  void aPictureNeedsAPixel() {
    assertThrows(IllegalArgumentException.class, () -> PictureTones.of(new int[0]));
    assertThrows(IllegalArgumentException.class, () -> LightnessTones.of(new double[0]));
    assertThrows(
        IllegalArgumentException.class, () -> LightnessTones.of(new double[] {1, Double.NaN}));
    assertThrows(
        IllegalArgumentException.class, () -> ColourTones.of(new double[1], new double[2]));
  }
}
