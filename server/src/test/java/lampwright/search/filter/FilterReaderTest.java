package lampwright.search.filter;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import lampwright.Sweep;
import lampwright.language.Said;
import lampwright.setup.Role;
import lampwright.setup.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilterReaderTest {

  private static Filter read(String content) {
    return assertInstanceOf(ReadFilter.Understood.class, FilterReader.read(content), () -> content)
        .filter();
  }

  private static String line(String content) {
    return english(
        assertInstanceOf(ReadFilter.Unclear.class, FilterReader.read(content), () -> content)
            .line());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lights 2 to 4 | lights 2 to 4",
        "2 to 4 lights | lights 2 to 4",
        "LIGHTS 2–4 | lights 2 to 4",
        "lights between 2 and 4 | lights 2 to 4",
        "lights at least 2 | lights from 2",
        "ambient below -1 | ambient below -1",
        "ambient under −1 stops | ambient below -1",
        "ambient from -2 below -1 | ambient from -2 below -1",
        "ratio above 1,5 stops | ratio above 1.5",
        "energy > 100 and up to 400 Ws | energy above 100 up to 400",
        "key height 30° | key height 30",
        "key_height 30 to 45 degrees | key height 30 to 45",
        "f/8 to f/11 | aperture f/8 to f/11",
        "from f/8 | aperture from f/8",
        "aperture 5.6 | aperture f/5.6",
        "place kind quarry | place kind quarry",
        "place kindling yard | place kindling yard",
        "place \"kind words\" | place \"kind words\"",
        "place: Tide Mole | place Tide Mole",
        "mood lonely or cold | mood lonely or cold",
        "without softbox | without gear softbox",
        "with softbox | gear softbox",
        "without fill | without role fill",
        "without mood merry | without mood merry",
        "season winter | season winter",
        "winter | season winter",
        "indoors | inside indoors",
        "within 20 km of Tide Mole | within 20 km of Tide Mole",
        "WITHIN 2.5km OF \"2, Old lane\" | within 2.5 km of \"2, Old lane\"",
        "within 5 km of 53.21, 0.29 | within 5 km of 53.21, 0.29",
        "within 5 km of -53.21 −0.29 | within 5 km of -53.21, -0.29",
        "gear “400 W·s head” | gear 400 W·s head",
      })
  void plainWordsAreReadAndWrittenBackInOneWay(String typed, String written) {
    assertEquals(written, read(typed).bracket());
    assertEquals(read(typed), read(written));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lihgts 2 | There is no mark “lihgts”. Maybe lights?",
        "plcae kind quarry | There is no mark “plcae”. Maybe place kind?",
        "wintre | There is no mark “wintre”. Maybe winter?",
        "season wintre | There is no season “wintre”. Maybe winter?",
        "contrast low | There is no contrast “low”. Known are: low contrast, normal contrast, high"
            + " contrast.",
        "season noon | There is no season “noon”. Known are: spring, summer, autumn, winter.",
        "lights many | “lights” needs a number. Maybe lights 2 to 4, or lights below 4?",
        "lights 4 to 2 | From 4 to 2 holds nothing. Maybe from 2 to 4?",
        "mood | “mood” needs words. Maybe mood some words?",
        "mood lonely or | Several words must be joined by “or”.",
        "mood \"lonely | A quotation mark is not closed.",
        "within far of here | Within needs a distance and a place. Maybe within 20 km of the name"
            + " of a location?",
        "within 0 km of here | Distance (0 km) must be more than 0 and on earth.",
        "within 5 km of 99, 3 | Latitude goes to 90°, longitude to 180°. Maybe they are swapped?",
      })
  void whatIsNotKnownIsSaidInOneLineWithWhatMayBeMeant(String typed, String line) {
    assertEquals(line, line(typed));
  }

  @Test
  void whatNobodyCanGuessIsAnsweredWithWhatIsKnown() {
    String line = line("zeppelin 4");
    for (Trait trait : Trait.values()) {
      assertTrue(line.contains(trait.word()), line);
    }
  }

  @Test
  void whatAFilterIsWrittenAsIsReadAsTheSameFilter() {
    long seed = 20_261_127;
    FiltersForTests filters = new FiltersForTests(seed);
    for (int i = 0; i < Sweep.cases(5_000); i++) {
      Filter filter = filters.next();
      String written = filter.bracket();
      assertEquals(filter, read(written), () -> "seed " + seed + ": " + written);
      // In a search among other words, whatever the filter's own words are.
      Asked asked = Asked.of("lonely \"old [b] pier\" [" + written + "] quay");
      assertEquals(List.of(filter), asked.filters(), () -> "seed " + seed + ": " + written);
      assertEquals("lonely \"old [b] pier\" quay", asked.words());
      assertEquals(List.of(), asked.unclear());
    }
  }

  @Test
  void anythingCanBeTypedBetweenBracketsAndAroundThem() {
    long seed = 7_1127;
    Random random = new Random(seed);
    String letters = "[]\"“”or to f/8-−.,:°·wx \t\n\u0000\ud800\udc00é漢9";
    List<String> pieces =
        List.of(
            "within",
            " km of ",
            "without ",
            "lights ",
            "mood ",
            "place kind",
            "below ",
            "from ",
            "9999999",
            "winter",
            "\"\"",
            " or ");
    for (int i = 0; i < Sweep.cases(5_000); i++) {
      StringBuilder typed = new StringBuilder();
      int length = random.nextInt(i % 1_000 == 0 ? 3_000 : 20);
      for (int j = 0; j < length; j++) {
        if (random.nextBoolean()) {
          typed.append(letters.charAt(random.nextInt(letters.length())));
        } else {
          typed.append(pieces.get(random.nextInt(pieces.size())));
        }
      }
      String text = typed.toString();
      String message = "seed " + seed + ", text " + i + ": " + text;
      if (FilterReader.read(text) instanceof ReadFilter.Unclear(Said said)) {
        String line = english(said);
        assertTrue(line.length() < 600 && line.lines().count() == 1, message);
      } else {
        Filter filter = read(text);
        assertEquals(filter, read(filter.bracket()), message);
        assertTrue(!FilterWriter.words(filter).isBlank() && !FilterWriter.phrase(filter).isBlank());
      }
      Asked asked = Asked.of(text);
      asked
          .unclear()
          .forEach(one -> assertEquals(1, english(one.message()).lines().count(), message));
    }
  }

  @Test
  void bracketsAreTakenOutOfTheWordsAndFaultyOnesSayWhereTheyStand() {
    Asked asked = Asked.of("lonely [lights 2] harbour [lihgts 3] [season winter] at night");
    assertEquals("lonely harbour at night", asked.words());
    assertEquals(
        List.of(Filter.Range.exactly(Trait.LIGHTS, 2), Filter.OneOf.of(Trait.SEASON, "winter")),
        asked.filters());
    assertEquals(
        List.of("“[lihgts 3]” at character 27: There is no mark “lihgts”. Maybe lights?"),
        asked.unclear().stream().map(one -> english(one.message())).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lonely [lights 2 | “[lights 2” at character 8: The bracket is not closed. Maybe a ] is"
            + " missing?",
        "[ | “[” at character 1: The bracket is not closed. Maybe a ] is missing?",
        "a [] b | “[]” at character 3: It is empty. Maybe [lights 2 to 4]?",
        "a [mood x [lights 2] | “[mood x [lights 2]” at character 3: A word with a quotation mark"
            + " or bracket in it must stand in quotation marks.",
      })
  void aBracketThatIsNotWholeIsNamed(String typed, String line) {
    assertEquals(
        List.of(line),
        Asked.of(typed).unclear().stream().map(one -> english(one.message())).toList());
  }

  @Test
  void aClosingBracketAloneIsAWordLikeAnyOther() {
    Asked asked = Asked.of("a ] b");
    assertEquals("a ] b", asked.words());
    assertEquals(List.of(), asked.unclear());
  }

  @Test
  void aQuotationMarkForInchesDoesNotSwallowABracket() {
    Asked asked = Asked.of("a 5\" dish [place \"Tide Mole\"]");
    assertEquals("a 5\" dish", asked.words());
    assertEquals(List.of(Filter.OneOf.of(Trait.PLACE, "Tide Mole")), asked.filters());
  }

  @Test
  void theFixedWordsAreThoseOfTheSetup() {
    assertEquals(
        Arrays.stream(Role.values()).map(role -> role.name().toLowerCase(Locale.ROOT)).toList(),
        Trait.ROLE.vocabulary());
    assertEquals(
        Arrays.stream(Standing.State.values()).map(Standing.State::word).toList(),
        Trait.STATE.vocabulary());
  }

  @Test
  void peopleReadFiltersInPlainWords() {
    assertEquals("1 light", FilterWriter.words(read("lights 1")));
    assertEquals("2 to 4 lights", FilterWriter.words(read("lights 2 to 4")));
    assertEquals("Ambient below −1 stops", FilterWriter.words(read("ambient below -1")));
    assertEquals("Key height 30 to 45°", FilterWriter.words(read("key height 30 to 45")));
    assertEquals("Aperture f/8 to f/11", FilterWriter.words(read("f/8 to f/11")));
    assertEquals("Mood: lonely or cold", FilterWriter.words(read("mood lonely or cold")));
    assertEquals("Gear: not softbox", FilterWriter.words(read("without softbox")));
    assertEquals(
        "Within 20 km of Tide Mole", FilterWriter.words(read("within 20 km of Tide Mole")));
  }

  @ParameterizedTest
  @CsvSource({
    "LIGHTS, 3, 3",
    "AMBIENT, -1.5, from -2 below -1",
    "AMBIENT, -1, from -1 below 0",
    "RATIO, 0.2, from 0 below 1",
    "ENERGY, 24, below 25",
    "ENERGY, 25, from 25 below 50",
    "ENERGY, 399, from 200 below 400",
    "ENERGY, 400, from 400 below 800",
    "MODIFIER, 1.2, from 1 below 1.5",
    "KEY_HEIGHT, -3, from -15 below 0",
    "APERTURE, 7.1, from f/5.6 below f/8",
    "APERTURE, 8, from f/8 below f/11",
    "APERTURE, 0.95, below f/1",
    "APERTURE, 45, from f/32",
    "ISO, 100, from 100 below 200",
    "YEAR, 2022, 2022",
  })
  void aNumberIsCountedInOneFixedRangeThatHoldsIt(Trait trait, double number, String range) {
    Filter.Range around = trait.rangeAround(number);
    assertEquals(range, FilterWriter.bounds(around));
    assertTrue(Traits.builder().number(trait, number).build().pass(around));
    assertEquals(around, read(around.bracket()));
  }

  @Test
  void wordsAreComparedWithoutRegardToCapitalsAndComposition() {
    Traits traits = Traits.builder().words(Trait.PLACE, "Caf\u00e9 am Kai").build();
    assertTrue(traits.pass(Filter.OneOf.of(Trait.PLACE, "cafe\u0301  AM kai")));
    assertEquals(Optional.empty(), traits.point());
  }
}
