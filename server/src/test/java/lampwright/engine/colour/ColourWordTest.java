package lampwright.engine.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The everyday words against the named colours of the CSS Color Module Level 4 (W3C), 6.1. */
class ColourWordTest {

  /** All of its names that end in one of our words, with its values. */
  private static final String NAMED =
      """
      aliceblue #f0f8ff; antiquewhite #faebd7; beige #f5f5dc;
      black #000000; blue #0000ff; blueviolet #8a2be2;
      brown #a52a2a; cadetblue #5f9ea0; cornflowerblue #6495ed;
      darkblue #00008b; darkgreen #006400; darkgrey #a9a9a9;
      darkolivegreen #556b2f; darkorange #ff8c00; darkred #8b0000;
      darkseagreen #8fbc8f; darkslateblue #483d8b; darkslategrey #2f4f4f;
      darkviolet #9400d3; deeppink #ff1493; deepskyblue #00bfff;
      dimgrey #696969; dodgerblue #1e90ff; floralwhite #fffaf0;
      forestgreen #228b22; ghostwhite #f8f8ff; green #008000;
      greenyellow #adff2f; grey #808080; hotpink #ff69b4;
      indianred #cd5c5c; lawngreen #7cfc00; lightblue #add8e6;
      lightgoldenrodyellow #fafad2; lightgreen #90ee90; lightgrey #d3d3d3;
      lightpink #ffb6c1; lightseagreen #20b2aa; lightskyblue #87cefa;
      lightslategrey #778899; lightsteelblue #b0c4de; lightyellow #ffffe0;
      limegreen #32cd32; mediumblue #0000cd; mediumseagreen #3cb371;
      mediumslateblue #7b68ee; mediumspringgreen #00fa9a; mediumvioletred #c71585;
      midnightblue #191970; navajowhite #ffdead; orange #ffa500;
      orangered #ff4500; palegreen #98fb98; palevioletred #db7093;
      pink #ffc0cb; powderblue #b0e0e6; red #ff0000;
      rosybrown #bc8f8f; royalblue #4169e1; saddlebrown #8b4513;
      sandybrown #f4a460; seagreen #2e8b57; skyblue #87ceeb;
      slateblue #6a5acd; slategrey #708090; springgreen #00ff7f;
      steelblue #4682b4; teal #008080; violet #ee82ee;
      white #ffffff; yellow #ffff00; yellowgreen #9acd32
      """;

  /**
   * Where nobody would say the last word of the name of what is seen: pale ones that are nearly
   * white or beige, brown that is red, pinks that are named for the red or violet beside them, and
   * blues and greens that lie toward teal.
   */
  private static final Map<String, ColourWord> OTHERWISE =
      Map.ofEntries(
          Map.entry("aliceblue", ColourWord.WHITE),
          Map.entry("antiquewhite", ColourWord.BEIGE),
          Map.entry("brown", ColourWord.RED),
          Map.entry("cadetblue", ColourWord.TEAL),
          Map.entry("darkslategrey", ColourWord.TEAL),
          Map.entry("greenyellow", ColourWord.GREEN),
          Map.entry("lightgoldenrodyellow", ColourWord.BEIGE),
          Map.entry("lightseagreen", ColourWord.TEAL),
          Map.entry("lightyellow", ColourWord.WHITE),
          Map.entry("mediumvioletred", ColourWord.PINK),
          Map.entry("navajowhite", ColourWord.BEIGE),
          Map.entry("palevioletred", ColourWord.PINK),
          Map.entry("powderblue", ColourWord.TEAL),
          Map.entry("rosybrown", ColourWord.GREY),
          Map.entry("sandybrown", ColourWord.ORANGE),
          Map.entry("slateblue", ColourWord.VIOLET),
          Map.entry("mediumslateblue", ColourWord.VIOLET),
          Map.entry("violet", ColourWord.PINK));

  @Test
  void coloursOfTheCssColorModuleAreCalledByTheLastWordOfTheirNames() {
    List<String> named = Arrays.stream(NAMED.split(";", -1)).map(String::strip).toList();
    assertTrue(named.size() > 70, named.size() + " names");
    for (String each : named) {
      String name = each.substring(0, each.indexOf(' '));
      ColourWord word = ColourWord.of(Integer.parseInt(each.substring(each.indexOf('#') + 1), 16));
      assertEquals(OTHERWISE.getOrDefault(name, lastWord(name)), word, each);
    }
  }

  private static ColourWord lastWord(String name) {
    return Arrays.stream(ColourWord.values())
        .filter(word -> name.endsWith(word.word()))
        .max(Comparator.comparingInt(word -> word.word().length()))
        .orElseThrow();
  }

  /** Further names of the same list, with the everyday word that dictionaries explain them by. */
  @ParameterizedTest
  @CsvSource({
    "crimson, dc143c, RED",
    "firebrick, b22222, RED",
    "gold, ffd700, YELLOW",
    "khaki, f0e68c, YELLOW",
    "olive, 808000, GREEN",
    "lime, 00ff00, GREEN",
    "turquoise, 40e0d0, TEAL",
    "darkcyan, 008b8b, TEAL",
    "navy, 000080, BLUE",
    "indigo, 4b0082, VIOLET",
    "purple, 800080, VIOLET",
    "magenta, ff00ff, PINK",
    "sienna, a0522d, BROWN",
    "tan, d2b48c, BEIGE",
    "wheat, f5deb3, BEIGE",
    "silver, c0c0c0, GREY",
    "ivory, fffff0, WHITE",
    "snow, fffafa, WHITE"
  })
  void otherNamesMeanTheWordTheyAreExplainedBy(String name, String hex, ColourWord word) {
    assertEquals(word, ColourWord.of(Integer.parseInt(hex, 16)), name);
  }

  @Test
  void whatStandsAboveTheThreeBytesOfAColourIsIgnored() {
    assertEquals(ColourWord.TEAL, ColourWord.of(0xff008080));
  }
}
