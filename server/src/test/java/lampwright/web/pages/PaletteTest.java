package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast of the colours in the style sheet, as WCAG 2.2 defines it (1.4.3 and 1.4.11). */
class PaletteTest {

  private static final Pattern BLOCK = Pattern.compile("\\{[^{}]*--paper:[^{}]*}");
  private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9a-f]{3,6});");

  private final List<Map<String, String>> palettes = read();

  @ParameterizedTest
  @CsvSource({
    "ink, paper, 4.5",
    "ink, well, 4.5",
    "ink, warm-pale, 4.5",
    "quiet, paper, 4.5",
    "quiet, well, 4.5",
    "warm, paper, 4.5",
    "cool, paper, 4.5",
    "paper, ink, 4.5",
    "paper, cool, 4.5",
    "edge, paper, 3",
    "warm, warm-pale, 3",
    "warm, cool-pale, 3",
    "ink, cool-pale, 3",
  })
  void everyPairCanBeReadInEveryTheme(String front, String back, double least) {
    for (Map<String, String> palette : palettes) {
      double ratio = ratio(colour(palette, front), colour(palette, back));
      assertTrue(ratio >= least, front + " on " + back + " is " + ratio + " in " + palette);
    }
  }

  @Test
  void theDimThemeIsTheSameByPreferenceAndByChoice() {
    assertEquals(4, palettes.size(), "day, dim by preference, dim by choice, paper");
    assertEquals(palettes.get(1), palettes.get(2));
  }

  @Test
  void theDimThemeHasNothingWhite() {
    palettes.get(1).values().forEach(c -> assertTrue(luminance(c) < 0.75, c));
  }

  @Test
  void onPaperEveryWordIsBlack() {
    for (String name : List.of("ink", "quiet", "warm", "cool")) {
      assertEquals("#000", colour(palettes.get(3), name));
    }
  }

  /** WCAG 2.2, "contrast ratio": black on white is 21. */
  @Test
  void blackOnWhiteIsTwentyOneWcag() {
    assertEquals(21, ratio("#000", "#fff"), 1e-9);
  }

  private static String colour(Map<String, String> palette, String name) {
    String colour = palette.get(name);
    if (colour == null) {
      throw new IllegalStateException("No colour " + name + " in " + palette);
    }
    return colour;
  }

  private static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    String digits = colour.length() == 4 ? colour.replaceAll("([0-9a-f])", "$1$1") : colour;
    return 0.2126 * linear(digits, 1) + 0.7152 * linear(digits, 3) + 0.0722 * linear(digits, 5);
  }

  private static double linear(String digits, int from) {
    double share = Integer.parseInt(digits.substring(from, from + 2), 16) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static List<Map<String, String>> read() {
    Assets assets = Assets.fromClassPath();
    try (var in = assets.find(assets.hash(), Assets.STYLE).orElseThrow().open()) {
      String css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return BLOCK
          .matcher(css)
          .results()
          .map(MatchResult::group)
          .map(PaletteTest::colours)
          .toList();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, String> colours(String block) {
    Map<String, String> colours = new HashMap<>();
    COLOUR.matcher(block).results().forEach(m -> colours.put(m.group(1), m.group(2)));
    return colours;
  }
}
