package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.language.Notation;
import lampwright.wording.WordsForTests;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The glossary's drawings: their figures against values from outside, their leaves as drawings. */
class FlipBookTest {

  private static final Notation USUAL = UsualNotation.READ;
  private static final Notation GERMAN = WordsForTests.germanFeetAndThirds().notation();

  /** A leaf is one of about ninety on one page. */
  private static final int LARGEST = 6_000;

  static Stream<FlipBook> books() {
    return Stream.of(USUAL, GERMAN)
        .flatMap(
            notation ->
                Stream.of(
                    DistanceBook.of(notation),
                    SoftnessBook.of(notation),
                    RatioBook.of(notation),
                    TurnBook.of(notation),
                    TimeBook.of(notation),
                    PowerBook.of(notation),
                    GelBook.of(notation)));
  }

  private static String says(FlipBook book, String value) {
    return book.leaves().stream()
        .filter(leaf -> leaf.value().equals(value))
        .map(leaf -> leaf.says().replace('\u00a0', ' '))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no leaf " + value));
  }

  /** The first number that a sentence has before some words. */
  private static double before(String words, String says) {
    Matcher found = Pattern.compile("(\\d+(?:\\.\\d+)?) " + words).matcher(says);
    assertTrue(found.find(), says);
    return Double.parseDouble(found.group(1));
  }

  /** The inverse square law (IES LM-63 and every handbook): 1/4 at twice, 1/2 at 1.41 times. */
  @Test
  void lightFallsTwoStopsAtTwiceTheDistanceByTheInverseSquareLaw() {
    FlipBook book = DistanceBook.of(USUAL);
    assertEquals("1 m: the exposure is set here.", says(book, "1\u00a0m"));
    assertEquals("1.41 m: 1.0 stop under the light at 1 m.", says(book, "1.41\u00a0m"));
    assertEquals("2 m: 2.0 stops under the light at 1 m.", says(book, "2\u00a0m"));
    assertEquals("2.83 m: 3.0 stops under the light at 1 m.", says(book, "2.83\u00a0m"));
    assertEquals("4 m: 4.0 stops under the light at 1 m.", says(book, "4\u00a0m"));
  }

  /** Plain trigonometry: 1 m at 1 m fills 2 atan(1/2) = 53.13°, at 2 m 28.07°, at 4 m 14.25°. */
  @Test
  void aFaceLooksAsWideAsTrigonometrySays() {
    FlipBook book = SoftnessBook.of(USUAL);
    assertTrue(says(book, "1\u00a0m").startsWith("1 m: the face looks 53° wide, soft."));
    assertTrue(says(book, "2\u00a0m").startsWith("2 m: the face looks 28° wide, fairly soft."));
    assertTrue(says(book, "4\u00a0m").startsWith("4 m: the face looks 14° wide, fairly soft."));
  }

  /** By similar triangles the edge is as wide as the gap where the face is as far as it is wide. */
  @Test
  void theEdgeOfAShadowIsAsWideAsSimilarTrianglesSay() {
    FlipBook book = SoftnessBook.of(USUAL);
    assertTrue(says(book, "1\u00a0m").endsWith("0.5 m behind, is 0.5 m wide."));
    assertTrue(says(book, "2\u00a0m").endsWith("0.5 m behind, is 0.25 m wide."));
  }

  /**
   * The sun's mean apparent diameter is 31′ 59″ (Astronomical Almanac, from memory), so a shadow's
   * edge is about a hundredth of the way from what throws it: 9.3 mm a metre.
   */
  @Test
  void theSunsShadowHasAnEdgeOfAHundredthOfItsWayByTheAlmanac() {
    Metres edge = EmittingFace.penumbra(new Degrees(31.98 / 60), new Metres(1));
    assertEquals(0.0093, edge.value(), 0.00005);
  }

  /** Common practice, no source: fill level 2:1, one stop down 3:1, two 5:1, three 9:1. */
  @Test
  void lightingRatiosAreThoseOfTheTrade() {
    FlipBook book = RatioBook.of(USUAL);
    assertEquals(
        "Fill level with the key: lit to shadow 2.0 : 1, a contrast of 1.0 stop.",
        says(book, "0.0"));
    assertEquals(
        "Fill 1.0 stop under the key: lit to shadow 3.0 : 1, a contrast of 1.6 stops.",
        says(book, "−1.0"));
    assertTrue(says(book, "−2.0").contains("5.0 : 1"));
    assertTrue(says(book, "−3.0").contains("9.0 : 1"));
  }

  /**
   * For a point with a cosine spread the near one, 1.27 m off, is 2.15 stops over the far one, 2.56
   * m off and 24.4° aside (inverse square and cosine laws); a box of a metre falls off less.
   */
  @Test
  void aSoftboxFallsOffLessThanASmallLightByTheCosineLawAndTurningBringsBothTogether() {
    FlipBook book = TurnBook.of(USUAL);
    double apart = before("stops? under it", says(book, "0°"));
    assertTrue(apart < 2.15 && apart > 1.8, "" + apart);
    double lost = 0;
    for (FlipBook.Leaf leaf : book.leaves().subList(1, book.leaves().size())) {
      double now = before("stops? under it", leaf.says());
      double loses =
          leaf.says().contains("next to nothing") ? 0 : before("stops?, the far one", leaf.says());
      assertTrue(now <= apart && loses >= lost, leaf.says());
      apart = now;
      lost = loses;
    }
    assertTrue(apart < 1.5 && lost > 0.5, "" + apart + ", " + lost);
  }

  /**
   * Exposure values (ANSI PH2.7): f/8 at 1/125 s and ISO 100 is EV 13, three stops over an ambient
   * of EV 10. Two equal lights are one stop more (common practice, no source).
   */
  @Test
  void aShorterTimeLowersTheAmbientAndLeavesTheFlashByTheTableOfExposureValues() {
    FlipBook book = TimeBook.of(USUAL);
    assertTrue(says(book, "1/15 s").endsWith("Together they are 1.0 stop over."));
    assertTrue(says(book, "1/125 s").contains("the ambient 3.0 stops under"));
    assertTrue(says(book, "1/250 s").contains("the ambient 4.0 stops under"));
    assertTrue(says(book, "1/60 s").contains("the flash is as it was"));
  }

  /**
   * t0.1 is log2(10) times t0.5 (notes of flash makers on ISO 2827): 1/120 s for 1/400 s. A thin
   * lens of 50 mm at 5 m draws 5 m/s as 50.5 mm/s: 0.42 mm, 14.5 times the diagonal's 1500th.
   */
  @Test
  void aFlashThatIsCutShortFreezesBetterByTheExponentialDecay() {
    FlipBook book = PowerBook.of(USUAL);
    assertTrue(
        says(book, "full")
            .endsWith(
                "draws for 1/120 s, a runner at 5 m/s blurs over 14.5 circles of confusion:"
                    + " blurred."),
        says(book, "full"));
    // At half energy the pulse is cut at t0.5, and three stops down after 0.193 of it.
    assertTrue(says(book, "−1.0").contains("1/400 s"), says(book, "−1.0"));
    assertTrue(says(book, "−3.0").endsWith(": frozen."), says(book, "−3.0"));
  }

  /** 131 mireds take 5500 K to 3200 K (textbook table of conversion filters): 130 nearly so. */
  @Test
  void aFullWarmGelMakesTungstenOfFlashByTheTextbook() {
    assertEquals("+130 mireds: 5500 K become 3210 K.", says(GelBook.of(USUAL), "+130"));
    assertEquals("Without a gel: 5500 K, 182 mireds.", says(GelBook.of(USUAL), "0"));
  }

  @ParameterizedTest
  @MethodSource("books")
  void aBookHasElevenToFifteenLeavesThatDiffer(FlipBook book) {
    int count = book.leaves().size();
    assertTrue(count >= 11 && count <= 15, book.key() + ": " + count);
    Set<String> values = new HashSet<>();
    Set<String> drawings = new HashSet<>();
    for (FlipBook.Leaf leaf : book.leaves()) {
      assertTrue(values.add(leaf.value()), book.key() + ": " + leaf.value());
      assertTrue(drawings.add(leaf.drawing().markup()), book.key() + ": " + leaf.value());
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void aLeafIsSmallNamedWithoutIdsAndKeepsItsWordsInside(FlipBook book) {
    for (FlipBook.Leaf leaf : book.leaves()) {
      String markup = leaf.drawing().markup();
      assertTrue(
          markup.length() < LARGEST, book.key() + " " + leaf.value() + ": " + markup.length());
      Document svg = Jsoup.parse(markup, "", Parser.xmlParser());
      assertEquals(1, svg.select("svg[role=img] > title").size());
      assertTrue(svg.select("[id], [style]").isEmpty());
      for (Element text : svg.select("text")) {
        assertInside(book, text);
      }
    }
  }

  private static void assertInside(FlipBook book, Element text) {
    boolean isWords = text.hasClass("flip-words");
    double width =
        isWords ? TextSize.ofWords(text.text(), 14) : TextSize.ofFigures(text.text(), 13);
    double x = Double.parseDouble(text.attr("x"));
    double from =
        switch (text.attr("text-anchor")) {
          case "start" -> x;
          case "middle" -> x - width / 2;
          default -> x - width;
        };
    assertTrue(
        from >= -1 && from + width <= FlipSheet.WIDTH + 1,
        book.key() + ": " + text.text() + " from " + from + " to " + (from + width));
  }

  @Test
  void paperShowsTheFirstTheMiddleAndTheLastLeaf() {
    FlipBook book = DistanceBook.of(USUAL);
    List<Integer> shown =
        IntStream.range(0, book.leaves().size()).filter(book::isOnPaper).boxed().toList();
    assertEquals(List.of(0, 6, 12), shown);
    assertEquals(6, book.start());
  }
}
