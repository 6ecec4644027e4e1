package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import lampwright.meaning.Meanings;
import lampwright.search.Suggestions.Asker;
import lampwright.search.Suggestions.Value;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a beginning may become, and that its counts are those of a search. */
class SuggestionsTest {

  private static final long SEED = 20_261_127;
  private static final Asker OWNER = new Asker("demo", false);
  private static final Asker READER = new Asker("demo", true);

  @TempDir Path folder;

  private SetupIndex index;
  private Suggestions suggestions;

  @BeforeEach
  void open() {
    index = SetupIndex.open(folder, "catalogue");
    suggestions = new Suggestions(index);
  }

  @AfterEach
  void close() {
    index.close();
  }

  private void put(IndexEntry.Builder entry) {
    index.put(entry.build());
    index.refresh();
  }

  private static IndexEntry.Builder draft(String id, String title) {
    return IndexEntry.of("demo", id, 1, title).standing("draft", false, false);
  }

  private List<Value> values(Asker asker, String prefix) {
    return suggestions.values(asker, prefix, _ -> true, 8);
  }

  @Test
  void anyWordOfANameIsABeginning() {
    put(IndexEntry.of("demo", "a", 1, "Boat").placeName("Tide Mole"));
    List<Value> mole = List.of(new Value(Trait.PLACE, "Tide Mole", 1));
    assertEquals(mole, values(OWNER, "mo"));
    assertEquals(mole, values(OWNER, "tide m"));
    assertEquals(List.of(), values(OWNER, "ole"));
  }

  @Test
  void aSlipOfThePenInABeginningIsForgivenWhereNothingBeginsSo() {
    put(IndexEntry.of("demo", "a", 1, "Boat").placeKind("harbour").moods(List.of("bleak")));
    List<Value> harbour = List.of(new Value(Trait.PLACE_KIND, "harbour", 1));
    assertEquals(harbour, values(OWNER, "habr"));
    assertEquals(harbour, values(OWNER, "harbur"));
    assertEquals(List.of(), values(OWNER, "hxyr"));
  }

  @Test
  void draftsArchivedOnesAndOtherStudiosShowAReaderNothing() {
    put(draft("a", "Secret quarry").placeKind("quarry").moods(List.of("bleak")));
    put(IndexEntry.of("demo", "b", 1, "Open pit").moods(List.of("bleak")));
    put(IndexEntry.of("rival", "c", 1, "Quarry").placeKind("quarry").moods(List.of("bleak")));
    put(
        IndexEntry.of("demo", "d", 1, "Quarry put by")
            .placeKind("quarry")
            .standing("proven", true, false));
    assertEquals(List.of(), values(READER, "quar"));
    assertEquals(List.of(), suggestions.titles(READER, "quar", 5));
    assertEquals(List.of(new Value(Trait.MOOD, "bleak", 1)), values(READER, "bl"));
    assertEquals(List.of(new Value(Trait.PLACE_KIND, "quarry", 1)), values(OWNER, "quar"));
    assertEquals(List.of("a"), suggestions.titles(OWNER, "quar", 5));
    assertEquals(List.of(new Value(Trait.MOOD, "bleak", 2)), values(OWNER, "bl"));
  }

  @Test
  void whatIsChangedOrDeletedIsNotSuggestedAnyMore() {
    put(IndexEntry.of("demo", "a", 1, "Boat").moods(List.of("bleak")));
    put(IndexEntry.of("demo", "a", 2, "Boat").moods(List.of("calm")));
    assertEquals(List.of(), values(OWNER, "bleak"));
    assertEquals(List.of(new Value(Trait.MOOD, "calm", 1)), values(OWNER, "calm"));
    index.delete("demo", "a", 3);
    index.refresh();
    assertEquals(List.of(), values(OWNER, "calm"));
    assertEquals(List.of(), suggestions.titles(OWNER, "boat", 5));
  }

  @Test
  void theLargestAreKeptWithTheCountsThatASearchForThemGives() {
    Random random = new Random(SEED);
    for (int i = 0; i < 240; i++) {
      boolean proven = random.nextInt(3) > 0;
      String mood = "fog " + (char) ('a' + random.nextInt(12));
      index.put(
          IndexEntry.of(random.nextInt(5) == 0 ? "rival" : "demo", "s" + i, 1, "Pier " + i)
              .moods(List.of(mood, "calm"))
              .placeName((random.nextBoolean() ? "Fog " : "fog ") + random.nextInt(9))
              .standing(proven ? "proven" : "draft", random.nextInt(9) == 0, proven)
              .build());
      if (i % 50 == 0) {
        index.refresh();
      }
    }
    index.refresh();
    Search search = new Search(index, Meanings.NONE);
    for (Asker asker : List.of(OWNER, READER)) {
      List<Value> all = suggestions.values(asker, "fog", _ -> true, 20);
      assertTrue(all.size() > 8, all.toString());
      assertEquals(all.subList(0, 5), suggestions.values(asker, "fog", _ -> true, 5));
      for (Value value : all) {
        Filter filter = Filter.OneOf.of(value.trait(), value.value());
        Question question = Question.of("demo", "").withFacets(Set.of()).and(filter);
        SearchResult.Answer answer =
            assertInstanceOf(
                SearchResult.Answer.class,
                search.search(asker.onlyForAll() ? question.onlyForAll() : question));
        assertEquals(answer.total(), value.count(), "seed " + SEED + ", " + value);
        assertEquals(answer.total(), suggestions.count(asker, filter));
      }
    }
  }
}
