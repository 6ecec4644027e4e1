package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.search.Instead;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.FilterWriter;
import lampwright.search.filter.Trait;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.api.Test;

/** What a filter is called on pages, beside what programs are told. */
class FilterWordsTest {

  private static final FilterWords ENGLISH = new FilterWords(WordsForTests.usual());
  private static final FilterWords GERMAN = new FilterWords(WordsForTests.germanFeetAndThirds());

  private static final List<Filter> FILTERS =
      Stream.concat(
              Stream.<Filter>of(
                  new Filter.OneOf(Trait.MOOD, List.of("lonely", "cold")),
                  new Filter.NoneOf(Trait.SOFTNESS, List.of("fairly soft")),
                  new Filter.Near(20, new Filter.Spot.Location("Old pier", Optional.empty())),
                  new Filter.Near(2.5, new Filter.Spot.At(new EarthPoint(50.35, -4.15))),
                  new Filter.Buildable("The bag", Filter.Buildable.USUAL_STOPS),
                  new Filter.Buildable("The bag", 0.5),
                  new Filter.Buildable("The bag", 2),
                  new Filter.Buildable("The bag", Filter.Buildable.MOST_STOPS)),
              Stream.of(Trait.values())
                  .filter(trait -> trait.kind() == Trait.Kind.NUMBER)
                  .flatMap(
                      trait ->
                          Stream.of(
                              trait.rangeAround(2),
                              new Filter.Range(trait, bound(2, true), bound(4, true)),
                              new Filter.Range(trait, bound(1, true), bound(1, true)),
                              new Filter.Range(trait, bound(0.5, false), Optional.empty()),
                              new Filter.Range(trait, Optional.empty(), bound(8, true)))))
          .toList();

  private static Optional<Filter.Bound> bound(double number, boolean included) {
    return Optional.of(new Filter.Bound(number, included));
  }

  @Test
  void inEnglishPagesSayWhatProgramsAreTold() {
    for (Filter filter : FILTERS) {
      assertEquals(FilterWriter.words(filter), ENGLISH.of(filter));
      if (filter instanceof Filter.Range range) {
        assertEquals(FilterWriter.choice(range), ENGLISH.choice(range));
      }
      for (Optional<Filter> offered : List.of(Optional.of(filter), Optional.<Filter>empty())) {
        Instead other = new Instead(List.of(filter), offered, "fog", "", List.of(), 3);
        assertEquals(other.lack(), ENGLISH.lack(other));
        assertEquals(other.offer(), ENGLISH.offer(other));
      }
    }
  }

  @Test
  void headingsAreCalledTheSameEverywhere() {
    for (Trait trait : Trait.values()) {
      String unit = trait.unit().isEmpty() ? "" : ", " + trait.unit();
      assertEquals(trait.label() + unit, ENGLISH.heading(trait));
      trait.vocabulary().forEach(word -> assertEquals(word, ENGLISH.value(trait, word)));
    }
  }

  @Test
  void aGermanReaderHasThemInGermanAndInFeet() {
    assertEquals(
        "Weichheit: nicht ziemlich weich",
        GERMAN.of(Filter.NoneOf.of(Trait.SOFTNESS, "fairly soft")));
    assertEquals(
        "Größter Lichtformer ab 3′ 3″",
        GERMAN.of(new Filter.Range(Trait.MODIFIER, bound(1, true), Optional.empty())));
    assertEquals(
        "Lichtkontrast 1,5 bis 3 Blenden",
        GERMAN.of(new Filter.Range(Trait.RATIO, bound(1.5, true), bound(3, true))));
  }

  @Test
  void whatPeopleWroteThemselvesStaysAsItIs() {
    assertEquals("low", GERMAN.value(Trait.MOOD, "low"));
    assertEquals("tief", GERMAN.value(Trait.SUN, "low"));
  }
}
