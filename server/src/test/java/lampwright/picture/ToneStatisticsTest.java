package lampwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import lampwright.engine.colour.Key;
import lampwright.engine.colour.LinearRgb;
import lampwright.engine.colour.Srgb;
import lampwright.engine.colour.Xyz;
import org.junit.jupiter.api.Test;

final class ToneStatisticsTest {

  private static ToneStatistics of(byte[] file) {
    if (PictureReader.read(ByteBuffer.wrap(file)) instanceof Picture picture) {
      return picture.statistics();
    }
    throw new AssertionError("No picture");
  }

  /**
   * L* of sRGB 119 is 50.03, red's CIELAB 53.24, 80.09, 67.20: values of IEC 61966-2-1 and CIE 15
   * as published conversion tables give them.
   */
  @Test
  void anEvenPictureHasItsOwnLightnessEverywhere() {
    int[] grey = new int[100];
    Arrays.fill(grey, Drawn.grey(119));
    ToneStatistics statistics = ToneStatistics.of(grey);
    statistics.lightness().forEach(lightness -> assertEquals(50.03, lightness, 0.005));
    assertEquals(0, statistics.rmsContrast(), 1e-9);
    assertEquals(0, statistics.spread().value(), 1e-9);
    assertEquals(0, statistics.warmth(), 0.02);
    assertEquals(List.of(new MainColour(0x777777, 1)), statistics.colours());

    int[] red = new int[100];
    Arrays.fill(red, 0xff0000);
    assertEquals(53.24, ToneStatistics.of(red).median(), 0.02);
    assertEquals(67.20, ToneStatistics.of(red).warmth(), 0.05);
  }

  @Test
  void twoHalvesAreTwoColoursOfHalfTheShareAndTheirStopsApart() {
    int[] pixels = IntStream.range(0, 1000).map(i -> i % 2 == 0 ? 0x336699 : 0xcc8844).toArray();
    ToneStatistics statistics = ToneStatistics.of(pixels);
    assertEquals(List.of(0.5, 0.5), statistics.colours().stream().map(MainColour::share).toList());
    assertEquals(
        List.of("#336699", "#cc8844"),
        statistics.colours().stream().map(MainColour::hex).sorted().toList());
    double dark = Srgb.ofBytes(0x33, 0x66, 0x99).toLinear().luminance();
    double light = Srgb.ofBytes(0xcc, 0x88, 0x44).toLinear().luminance();
    assertEquals(Math.log(light / dark) / Math.log(2), statistics.spread().value(), 1e-6);
  }

  @Test
  void aRampOfLightnessHasItsPercentilesOnTheRamp() {
    // Each lightness from 0 to 100 as often, within half a signal.
    int[] ramp =
        IntStream.range(0, 10_001)
            .map(
                i -> {
                  double lightness = i / 100.0;
                  double light =
                      lightness > 8
                          ? Math.pow((lightness + 16) / 116, 3)
                          : lightness * 27 / 24389.0;
                  return Drawn.grey((int) Math.round(255 * Srgb.signal(Math.min(1, light))));
                })
            .toArray();
    List<Double> lightness = ToneStatistics.of(ramp).lightness();
    for (int i = 0; i < lightness.size(); i++) {
      assertEquals(ToneStatistics.PERCENTS.get(i), lightness.get(i), 0.25);
    }
    assertEquals(Key.MIDDLE, ToneStatistics.of(ramp).key());
  }

  @Test
  void oneStopMoreLightLiftsTheMedianByWhatCielabSays() {
    BufferedImage scene = Drawn.scene(200, 150);
    int[] pixels = scene.getRGB(0, 0, 200, 150, null, 0, 200);
    int[] brighter = Arrays.stream(pixels).map(ToneStatisticsTest::oneStopMore).toArray();
    double median = ToneStatistics.of(pixels).median();
    // The median of a picture is one of its pixels, or between two near ones.
    double light = Math.pow((median + 16) / 116, 3);
    assertEquals(Xyz.lightness(2 * light), ToneStatistics.of(brighter).median(), 0.3);
  }

  private static int oneStopMore(int rgb) {
    LinearRgb light = Srgb.ofBytes((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff).toLinear();
    Srgb more = new LinearRgb(2 * light.red(), 2 * light.green(), 2 * light.blue()).toSrgb();
    return Drawn.rgb(
        (int) Math.round(255 * more.red()),
        (int) Math.round(255 * more.green()),
        (int) Math.round(255 * more.blue()));
  }

  /** Within 1.5 of L* and b*, a tenth of a stop and three hundredths of a share. */
  @Test
  void resizingReencodingAndTurningChangeNextToNothing() {
    ToneStatistics original = of(Drawn.png(Drawn.scene(1200, 800)));
    assertAlike(original, of(Drawn.png(Drawn.scene(600, 400))));
    assertAlike(original, of(Drawn.jpeg(Drawn.scene(1200, 800), 0.9)));
    assertAlike(
        original,
        of(Drawn.withExif(Drawn.jpeg(Drawn.scene(1200, 800), 0.9), ExifWriter.turned(6))));
  }

  private static void assertAlike(ToneStatistics one, ToneStatistics other) {
    for (int i = 0; i < one.lightness().size(); i++) {
      assertEquals(one.lightness().get(i), other.lightness().get(i), 1.5);
    }
    assertEquals(one.warmth(), other.warmth(), 1.5);
    assertEquals(one.spread().value(), other.spread().value(), 0.1);
    assertEquals(one.colours().size(), other.colours().size());
    for (int i = 0; i < one.colours().size(); i++) {
      assertEquals(one.colours().get(i).share(), other.colours().get(i).share(), 0.03);
    }
  }

  @Test
  void theSameColoursInAnotherOrderAreTheSameMainColours() {
    int[] pixels = Drawn.scene(120, 90).getRGB(0, 0, 120, 90, null, 0, 120);
    int[] backwards = new int[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      backwards[i] = pixels[pixels.length - 1 - i];
    }
    assertEquals(ToneStatistics.of(pixels).colours(), ToneStatistics.of(backwards).colours());
    assertTrue(ToneStatistics.of(pixels).colours().size() <= 6);
  }
}
