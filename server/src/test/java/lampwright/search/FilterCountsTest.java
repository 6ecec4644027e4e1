package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import lampwright.meaning.Meanings;
import lampwright.search.SearchResult.Answer;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.GreatCircle;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is found and counted, held against a plain walk over all entries. */
class FilterCountsTest {

  private static final long SEED = 20_261_127;
  private static final List<Trait> WORDS =
      List.of(Trait.MOOD, Trait.PLACE, Trait.PLACE_KIND, Trait.GEAR, Trait.SEASON, Trait.COLOUR);
  private static final List<Trait> NUMBERS =
      List.of(Trait.LIGHTS, Trait.AMBIENT, Trait.ENERGY, Trait.APERTURE, Trait.YEAR);

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private final List<IndexEntry> entries = new ArrayList<>();
  private SetupIndex index;
  private Search search;

  @BeforeEach
  void open() {
    index = SetupIndex.open(folder, "catalogue");
    search = new Search(index, Meanings.NONE);
  }

  @AfterEach
  void close() {
    index.close();
  }

  private void fill(int setups) {
    for (int i = 0; i < setups; i++) {
      boolean proven = random.nextInt(3) > 0;
      IndexEntry.Builder entry =
          IndexEntry.of(random.nextInt(4) == 0 ? "rival" : "demo", "s" + i, 1, title())
              .changedAt(Instant.ofEpochSecond(random.nextInt(1_000)))
              .lightCount(1 + random.nextInt(5))
              .standing(proven ? "proven" : "draft", false, proven)
              .traits(traits());
      entries.add(entry.build());
      index.put(entries.getLast());
      if (i % 70 == 0) {
        // Several segments, so that values have other numbers in each.
        index.refresh();
      }
    }
    index.refresh();
  }

  private String title() {
    return random.nextBoolean() ? "Pier" : "Barn";
  }

  private String word(Trait trait) {
    if (!trait.vocabulary().isEmpty()) {
      return trait.vocabulary().get(random.nextInt(trait.vocabulary().size()));
    }
    String word = trait.word() + " " + (char) ('a' + random.nextInt(5));
    return random.nextInt(3) == 0 ? word.toUpperCase(java.util.Locale.ROOT) : word;
  }

  private double number(Trait trait) {
    return switch (trait) {
      case LIGHTS -> 1 + random.nextInt(5);
      case AMBIENT -> random.nextInt(60) / 10.0 - 4;
      case ENERGY -> random.nextInt(1_000);
      case YEAR -> 2020 + random.nextInt(5);
      default -> 1 + random.nextInt(300) / 10.0;
    };
  }

  private EarthPoint point() {
    return new EarthPoint(53 + random.nextDouble(), random.nextInt(2) == 0 ? 179.8 : -179.7);
  }

  private Traits traits() {
    Traits.Builder traits = Traits.builder();
    for (Trait trait : WORDS) {
      for (int i = random.nextInt(3); i > 0; i--) {
        traits.words(trait, word(trait));
      }
    }
    for (Trait trait : NUMBERS) {
      if (trait != Trait.LIGHTS && random.nextInt(4) > 0) {
        traits.number(trait, number(trait));
      }
    }
    return random.nextInt(3) == 0 ? traits.build() : traits.point(point()).build();
  }

  private Filter filter() {
    Trait words = WORDS.get(random.nextInt(WORDS.size()));
    Trait numbers = NUMBERS.get(random.nextInt(NUMBERS.size()));
    double from = number(numbers);
    return switch (random.nextInt(6)) {
      case 0 -> Filter.OneOf.of(words, word(words));
      case 1 -> Filter.OneOf.of(words, word(words), word(words), "nowhere");
      case 2 -> Filter.NoneOf.of(words, word(words));
      case 3 ->
          new Filter.Range(numbers, Optional.of(Filter.Bound.excluding(from)), Optional.empty());
      case 4 -> Filter.Range.between(numbers, from, from + random.nextInt(3));
      default -> new Filter.Near(1 + random.nextInt(120), new Filter.Spot.At(point()));
    };
  }

  private List<IndexEntry> seen(Question question) {
    return entries.stream()
        .filter(entry -> entry.studio().equals(question.studio()))
        .filter(entry -> entry.forAll() || !question.standing().onlyForAll())
        .filter(
            entry -> question.text().isEmpty() || entry.title().equalsIgnoreCase(question.text()))
        .toList();
  }

  private static boolean passes(IndexEntry entry, List<Filter> filters) {
    return filters.stream().allMatch(entry.traits()::pass);
  }

  /** The counts of a trait by the keys of its values, by the plain way. */
  private Map<String, Long> plainCounts(Question question, Trait trait) {
    List<Filter> others =
        question.filters().stream().filter(filter -> filter.trait() != trait).toList();
    Map<String, Long> counts = new HashMap<>();
    for (IndexEntry entry : seen(question)) {
      if (passes(entry, others)) {
        entry
            .traits()
            .words()
            .getOrDefault(trait, List.of())
            .forEach(word -> counts.merge(Filter.key(word), 1L, Long::sum));
        Optional.ofNullable(entry.traits().numbers().get(trait))
            .map(trait::rangeAround)
            .ifPresent(range -> counts.merge(range.bracket(), 1L, Long::sum));
      }
    }
    return counts;
  }

  private Answer ask(Question question) {
    return assertInstanceOf(Answer.class, search.search(question));
  }

  private Question question() {
    List<Filter> filters = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      filters.add(filter());
    }
    Set<Trait> facets = EnumSet.noneOf(Trait.class);
    for (Trait trait : Trait.values()) {
      if (trait.isCounted() && random.nextBoolean()) {
        facets.add(trait);
      }
    }
    String text = random.nextInt(3) == 0 ? "pier" : "";
    Question question =
        Question.of("demo", text).withFilters(filters).withFacets(facets).withLimit(100);
    return random.nextBoolean() ? question.onlyForAll() : question;
  }

  @Test
  void totalsHitsAndCountsAreThoseOfAPlainWalkOverAllEntries() {
    fill(300);
    int found = 0;
    for (int i = 0; i < 400; i++) {
      Question question = question();
      String message = "seed " + SEED + ", question " + i + ": " + question;
      Answer answer = ask(question);
      Set<String> expected = new TreeSet<>();
      for (IndexEntry entry : seen(question)) {
        if (passes(entry, question.filters())) {
          expected.add(entry.setup());
        }
      }
      found += expected.isEmpty() ? 0 : 1;
      assertEquals(expected.size(), answer.total(), message);
      assertEquals(expected, new TreeSet<>(search.matching(question, 300).ids()), message);
      if (expected.size() <= 100) {
        Set<String> hits = new TreeSet<>();
        answer.items().forEach(hit -> hits.add(hit.setup()));
        assertEquals(expected, hits, message);
      }
      assertEquals(question.facets(), answer.facets().counts().keySet(), message);
      for (Trait trait : question.facets()) {
        Map<String, Long> counted = new HashMap<>();
        for (FacetCount count : answer.facets().of(trait)) {
          String key =
              trait.kind() == Trait.Kind.NUMBER
                  ? count.filter().bracket()
                  : Filter.key(count.value());
          counted.put(key, count.count());
        }
        assertEquals(plainCounts(question, trait), counted, message);
      }
    }
    assertTrue(found > 100 && found < 395, "Some find something, some nothing: " + found);
  }

  @Test
  void whatIsOfferedInsteadOfNothingIsFoundInJustThatNumber() {
    fill(200);
    int offered = 0;
    Set<Class<?>> kinds = new HashSet<>();
    for (int i = 0; i < 600; i++) {
      Question question = question();
      Answer answer = ask(question);
      String message = "seed " + SEED + ", question " + i + ": " + question;
      assertTrue(answer.total() == 0 || answer.instead().isEmpty(), message);
      for (Instead instead : answer.instead()) {
        Question other =
            new Question(
                "demo",
                instead.text(),
                instead.filters(),
                Set.of(),
                Question.Order.BEST,
                1,
                Optional.empty(),
                Optional.empty(),
                question.standing());
        assertTrue(instead.total() > 0, message);
        assertEquals(instead.total(), ask(other).total(), () -> message + instead);
        instead.offered().ifPresent(filter -> kinds.add(filter.getClass()));
        offered++;
      }
    }
    assertTrue(offered > 100, "Offers: " + offered);
    assertEquals(
        Set.of(Filter.OneOf.class, Filter.Range.class, Filter.Near.class),
        kinds,
        "Every kind of filter was widened");
  }

  private void put(String setup, Traits.Builder traits, int lights) {
    index.put(
        IndexEntry.of("demo", setup, 1, "Pier " + setup)
            .lightCount(lights)
            .traits(traits.build())
            .build());
  }

  private List<String> offers(Question question) {
    index.refresh();
    return ask(question).instead().stream().map(Instead::words).toList();
  }

  @Test
  void anEmptyResultSaysHowFarTheNearestAreAndWhatOtherNumbersThereAre() {
    Filter.Spot mole = new Filter.Spot.Location("Tide Mole", Optional.of(new EarthPoint(50, -20)));
    put("a", Traits.builder().point(50.3, -20), 3);
    put("b", Traits.builder().point(50.35, -20), 3);
    put("c", Traits.builder().point(49.65, -20), 5);
    put("d", Traits.builder().point(52, -20), 5);
    assertEquals(
        List.of(
            "No setup within 20 km of Tide Mole; 3 within 45 km.",
            "No setup within 20 km of Tide Mole; 4 without this mark."),
        offers(Question.of("demo", "").and(new Filter.Near(20, mole))));
    assertEquals(
        List.of(
            "No setup with 4 lights; 2 with 3.",
            "No setup with 4 lights; 2 with 5.",
            "No setup with 4 lights; 4 without this mark."),
        offers(Question.of("demo", "").and(Filter.Range.exactly(Trait.LIGHTS, 4))));
    assertEquals(
        List.of("No such setup says “zeppelin”; 2 without these words."),
        offers(Question.of("demo", "zeppelin").and(Filter.Range.exactly(Trait.LIGHTS, 3))));
    assertEquals(
        List.of("No setup has all of these marks; 4 without any."),
        offers(
            Question.of("demo", "")
                .and(
                    Filter.Range.exactly(Trait.LIGHTS, 4), Filter.OneOf.of(Trait.MOOD, "lonely"))));
  }

  @Test
  void theNearestComeFirstWhereThatIsTheOrderAndPagesGoOn() {
    fill(200);
    EarthPoint here = point();
    Question question =
        Question.of("demo", "")
            .and(new Filter.Near(80, new Filter.Spot.At(here)))
            .withOrder(Question.Order.NEAR)
            .withLimit(7);
    List<String> expected =
        entries.stream()
            .filter(entry -> entry.studio().equals("demo") && passes(entry, question.filters()))
            .sorted(
                Comparator.comparingDouble(
                    entry -> GreatCircle.km(here, entry.traits().point().orElseThrow())))
            .map(IndexEntry::setup)
            .toList();
    List<String> found = new ArrayList<>();
    Optional<String> cursor = Optional.empty();
    do {
      Answer page = ask(cursor.map(question::withCursor).orElse(question));
      page.items().forEach(hit -> found.add(hit.setup()));
      cursor = page.next();
    } while (cursor.isPresent());
    assertTrue(expected.size() > 14, "Found: " + expected.size());
    assertEquals(expected, found);
  }

  @Test
  void withoutWordsWhatIsProvenComesFirstThenTheNewestChange() {
    for (String state : List.of("draft", "proven")) {
      for (int second = 1; second <= 2; second++) {
        index.put(
            IndexEntry.of("demo", state + second, 1, "Pier")
                .changedAt(Instant.ofEpochSecond(second))
                .standing(state, false, state.equals("proven"))
                .build());
      }
    }
    index.refresh();
    assertEquals(
        List.of("proven2", "proven1", "draft2", "draft1"),
        ask(Question.of("demo", "")).items().stream().map(SearchResult.Hit::setup).toList());
  }

  @Test
  void waysToWriteAWordCountAsOneAndTheUsualOneIsShown() {
    for (String place : List.of("Old Pier", "old pier", "Old Pier")) {
      index.put(IndexEntry.of("demo", "s" + entries.size(), 1, "Pier").placeName(place).build());
      entries.add(IndexEntry.of("demo", "x", 1, "").build());
    }
    index.refresh();
    Answer answer = ask(Question.of("demo", "").and(Filter.OneOf.of(Trait.PLACE, "OLD PIER")));
    assertEquals(3, answer.total());
    assertEquals(Map.of("Old Pier", 3L), answer.facets().byValue(Trait.PLACE));
  }

  @Test
  void aReaderIsToldNothingOfDraftsByAnyFilterCountOrOffer() {
    IndexEntry.Builder draft =
        IndexEntry.of("demo", "d", 1, "Pier")
            .lightCount(7)
            .moods(List.of("hushed"))
            .placeName("Vault")
            .standing("draft", false, false)
            .traits(Traits.builder().point(50, 0).number(Trait.YEAR, 1999).build());
    index.put(draft.build());
    put("p", Traits.builder().point(50.01, 0), 2);
    index.refresh();
    Set<Trait> all = EnumSet.allOf(Trait.class);
    all.removeIf(trait -> !trait.isCounted());
    for (Filter filter :
        List.of(
            Filter.OneOf.of(Trait.MOOD, "hushed"),
            Filter.OneOf.of(Trait.PLACE, "Nowhere"),
            Filter.NoneOf.of(Trait.MOOD, "hushed"),
            Filter.Range.exactly(Trait.LIGHTS, 6),
            Filter.Range.exactly(Trait.YEAR, 1999),
            Filter.OneOf.of(Trait.STATE, "draft"),
            new Filter.Near(0.5, new Filter.Spot.At(new EarthPoint(50, 0))))) {
      Question question = Question.of("demo", "").and(filter).withFacets(all);
      Answer answer = ask(question.onlyForAll());
      String told = answer.facets() + " " + answer.instead();
      assertTrue(answer.total() <= 1, told);
      assertTrue(answer.items().stream().allMatch(hit -> hit.setup().equals("p")), told);
      for (List<FacetCount> counts : answer.facets().counts().values()) {
        for (FacetCount count : counts) {
          assertEquals(1, count.count(), told);
          assertFalse(
              Set.of("hushed", "Vault", "1999", "7", "draft").contains(count.value()), told);
        }
      }
      for (Instead instead : answer.instead()) {
        assertEquals(1, instead.total(), told);
        assertFalse(instead.offer().matches(".*(7|1999|hushed|Vault|draft).*"), told);
      }
    }
  }
}
