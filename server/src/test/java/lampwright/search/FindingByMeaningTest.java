package lampwright.search;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import lampwright.meaning.SentenceModel;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingByMeaningTest {

  private static final String STUDIO = "demo";

  private static final Map<String, String> TEXTS =
      Map.of(
          "cellist", "Cello lesson",
          "boxer", "A boxer wraps her hands",
          "mare", "A mare and her foal on the moor",
          "pier", "Nobody on the pier, the fog takes the far end",
          "fair", "A crowded fair at noon, balloons and brass");

  private static SentenceModel model;

  @TempDir private Path folder;
  private SetupIndex index;
  private Search search;

  @BeforeAll
  static void load() throws SentenceModel.Unavailable {
    model = SentenceModel.load();
  }

  @AfterAll
  static void unload() {
    model.close();
  }

  @BeforeEach
  void open() {
    index = SetupIndex.open(folder, "catalogue");
    search = new Search(index, text -> Optional.of(model.of(text)));
  }

  @AfterEach
  void close() {
    index.close();
  }

  private void putTexts() {
    TEXTS.forEach((id, text) -> put(IndexEntry.of(STUDIO, id, 1, text).build()));
    index.refresh();
  }

  private void put(IndexEntry entry) {
    index.put(entry.with(model.of(entry.about())));
  }

  private SearchResult.Answer answer(Question question) {
    return assertInstanceOf(SearchResult.Answer.class, search.search(question));
  }

  private List<String> found(String text) {
    return answer(Question.of(STUDIO, text)).items().stream().map(SearchResult.Hit::setup).toList();
  }

  @Test
  void whatIsSaidInOtherWordsIsFoundAndSaysSo() {
    putTexts();
    SearchResult.Hit hit = answer(Question.of(STUDIO, "violin player")).items().getFirst();
    assertEquals("cellist", hit.setup());
    assertEquals(List.of("near in meaning: Cello lesson"), english(hit.reasons()));
    assertEquals("mare", found("horse riding").getFirst());
    assertEquals("boxer", found("fist fighter").getFirst());
  }

  @Test
  void theWordItselfStillWins() {
    putTexts();
    put(
        IndexEntry.of(STUDIO, "said", 1, "Two lamps")
            .written(List.of("The violin player"))
            .build());
    index.refresh();
    assertEquals("said", found("violin").getFirst());
  }

  @Test
  void aPhraseInQuotesIsNotFoundByMeaning() {
    putTexts();
    assertEquals(List.of(), found("\"violin player\""));
  }

  @Test
  void withoutTheModelWordsAloneFindAndTheAnswerSaysSo() {
    putTexts();
    Search bare = new Search(index, Meanings.NONE);
    SearchResult.Answer byWords =
        assertInstanceOf(SearchResult.Answer.class, bare.search(Question.of(STUDIO, "a lesson")));
    assertTrue(byWords.byWordsAlone());
    assertEquals(
        List.of("cellist"), byWords.items().stream().map(SearchResult.Hit::setup).toList());
    assertFalse(answer(Question.of(STUDIO, "lesson")).byWordsAlone());
  }

  @Test
  void whatMayNotBeSeenIsNotFoundByMeaningEither() {
    put(IndexEntry.of(STUDIO, "draft", 1, "Cello lesson").standing("draft", false, false).build());
    put(IndexEntry.of("other", "foreign", 1, "Cello lesson").build());
    index.refresh();
    Question question = Question.of(STUDIO, "violin player");
    assertEquals(1, answer(question).total());
    assertEquals(0, answer(question.onlyForAll()).total());
  }

  @Test
  void pagesTogetherAreTheWholeListWithoutAGap() {
    Random random = new Random(7);
    List<String> bits = new ArrayList<>(TEXTS.values());
    for (int i = 0; i < 120; i++) {
      String text = bits.get(random.nextInt(bits.size())) + ", frame " + random.nextInt(30);
      put(IndexEntry.of(STUDIO, "s%03d".formatted(i), 1, text).build());
    }
    index.refresh();
    Question question = Question.of(STUDIO, "violin player in fog").withLimit(100);
    SearchResult.Answer whole = answer(question);
    List<String> paged = new ArrayList<>();
    Optional<String> cursor = Optional.empty();
    do {
      Question next = question.withLimit(7);
      SearchResult.Answer page = answer(cursor.map(next::withCursor).orElse(next));
      page.items().forEach(hit -> paged.add(hit.setup()));
      cursor = page.next();
      assertEquals(whole.total(), page.total());
    } while (cursor.isPresent());
    assertEquals(whole.total(), paged.size());
    assertEquals(new HashSet<>(paged).size(), paged.size());
    List<String> first = whole.items().stream().map(SearchResult.Hit::setup).toList();
    assertEquals(first, paged.subList(0, first.size()));
    assertEquals(new HashSet<>(paged), search.matching(question, paged.size()).ids());
    Matching more = search.matching(question, paged.size() - 1);
    assertEquals(Set.of(), more.ids(), "of more only the number is told");
    assertEquals(whole.total(), more.total());
  }

  /** A walk through the graph against looking at each, on generated clusters. */
  @Test
  void theWalkMissesHardlyAnyOfTheNearest() {
    Random random = new Random(20261127);
    float[][] middles = new float[60][];
    for (int i = 0; i < middles.length; i++) {
      middles[i] = numbers(random);
    }
    for (int i = 0; i < 4_000; i++) {
      float[] middle = middles[random.nextInt(middles.length)];
      index.put(IndexEntry.of(STUDIO, "s" + i, 1, "Setup").build().with(near(middle, random)));
    }
    index.refresh();
    int right = 0;
    int rounds = 30;
    for (int round = 0; round < rounds; round++) {
      Meaning asked = near(middles[round], random);
      Set<Integer> each =
          index.read(
              searcher ->
                  nearest(searcher, NearInMeaning.each(searcher, Chosen.of(searcher, ALL), asked)));
      each.retainAll(
          index.read(searcher -> nearest(searcher, NearInMeaning.walked(searcher, ALL, asked))));
      right += each.size();
    }
    assertTrue(right >= 0.99 * 10 * rounds, "found of " + 10 * rounds + ": " + right);
  }

  private static final Query ALL = new TermQuery(new Term(EntryDocument.STUDIO, STUDIO));

  private static Set<Integer> nearest(IndexSearcher searcher, NearInMeaning near) {
    return new HashSet<>(
        IntStream.range(0, searcher.getIndexReader().maxDoc())
            .boxed()
            .sorted((a, b) -> Double.compare(near.nearness(b), near.nearness(a)))
            .limit(10)
            .toList());
  }

  private static float[] numbers(Random random) {
    float[] numbers = new float[Meaning.DIMENSIONS];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = (float) random.nextGaussian();
    }
    return numbers;
  }

  private static Meaning near(float[] middle, Random random) {
    float[] numbers = numbers(random);
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = middle[i] + 0.5f * numbers[i];
    }
    return Meaning.of(numbers);
  }
}
