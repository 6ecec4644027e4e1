package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import lampwright.Sweep;
import lampwright.meaning.Meanings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SearchFuzzTest {

  private static final List<String> PIECES =
      List.of(
          "lonely",
          "first light",
          "before dawn",
          "the",
          "of",
          "\"",
          "“",
          "”",
          "(",
          ")",
          "[",
          "{",
          "+",
          "-",
          "!",
          "~2",
          "*",
          "?",
          ":",
          "\\",
          "/",
          "AND",
          "OR",
          "NOT",
          "f/5.6",
          "f/",
          "1/125",
          "1/",
          "·",
          " ",
          "\t",
          "\n",
          "\u0000",
          "\u0007",
          "\u001b",
          "\ud800",
          "\udc00",
          "\ud83d\ude00",
          "é",
          "ß",
          "İ",
          "ﬁ",
          "漢字",
          "العربية",
          "e\u0301",
          "\u202e",
          "\ufeff",
          "9999999999999999999",
          "softbox",
          "contre-jour",
          "W·s",
          "400W·s",
          "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa");

  @TempDir Path folder;

  @Test
  void anythingThatCanBeTypedAndWrittenIsTakenAndAnswered() {
    long seed = 20_261_124;
    Random random = new Random(seed);
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      Search search = new Search(index, Meanings.NONE);
      for (int i = 0; i < 60; i++) {
        index.put(
            IndexEntry.of("demo", "s" + i, 1, text(random, 8))
                .intent(text(random, i == 0 ? 20_000 : 40))
                .moods(List.of(text(random, 3), text(random, 2)))
                .placeName(text(random, 200))
                .placeKind(text(random, 2))
                .written(List.of(text(random, 30)))
                .build());
      }
      index.refresh();
      for (int i = 0; i < Sweep.cases(250); i++) {
        String typed = text(random, i % 100 == 0 ? 5_000 : 12);
        String message = "seed " + seed + ", question " + i;
        SearchResult result = search.search(Question.of("demo", typed));
        SearchResult.Answer answer = assertInstanceOf(SearchResult.Answer.class, result, message);
        assertTrue(answer.total() <= 60, message);
        assertEquals(Math.min(20, answer.total()), answer.items().size(), message);
      }
    }
  }

  @Test
  void longQuestionsStayWithinLucenesBounds() {
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.put(IndexEntry.of("demo", "s", 1, "Dusk").build());
      index.refresh();
      Search search = new Search(index, Meanings.NONE);
      StringBuilder everything = new StringBuilder();
      for (List<String> family : Thesaurus.families("mood-words.txt").reversed()) {
        everything.append(family.getFirst()).append(' ').append(family.getLast()).append(' ');
        assertInstanceOf(
            SearchResult.Answer.class, search.search(Question.of("demo", everything.toString())));
      }
      assertInstanceOf(
          SearchResult.Answer.class,
          search.search(Question.of("demo", "\"" + "dusk ".repeat(3_000) + "\"")));
      assertInstanceOf(
          SearchResult.Answer.class,
          search.search(Question.of("demo", "first light before dawn ".repeat(500))));
      assertInstanceOf(
          SearchResult.Answer.class, search.search(Question.of("demo", "x".repeat(10_000))));
    }
  }

  private static String text(Random random, int pieces) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(pieces) + 1; i > 0; i--) {
      if (random.nextInt(4) == 0) {
        text.append((char) random.nextInt(Character.MAX_VALUE + 1));
      } else {
        text.append(PIECES.get(random.nextInt(PIECES.size())));
      }
      if (random.nextBoolean()) {
        text.append(' ');
      }
    }
    return text.toString();
  }
}
