package lampwright.search;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.meaning.Meanings;
import lampwright.search.SearchResult.Answer;
import lampwright.search.SearchResult.Hit;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SearchTest {

  @TempDir Path folder;

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

  @Test
  void moodWordsFindTheirNeighboursAndTheWordsThemselvesComeFirst() {
    put(entry("bleak", "Harbour").intent("bleak harbour before dawn"));
    put(entry("said", "Pier").intent("A cold and lonely figure in the first light"));
    put(entry("wedding", "Wedding group").intent("a merry party at noon"));
    put(entry("kitchen", "Kitchen").intent("bright light on a table, the first course"));

    Answer answer = ask(Question.of("demo", "cold lonely first light"));

    assertEquals("said", answer.items().get(0).setup());
    assertEquals("bleak", answer.items().get(1).setup());
    assertTrue(answer.items().stream().noneMatch(hit -> hit.setup().equals("wedding")));
    assertEquals(
        List.of("intent: cold", "intent: lonely", "intent: first light"),
        english(answer.items().get(0).reasons()));
    assertEquals(
        List.of("intent: lonely — near “bleak”", "intent: first light — near “before dawn”"),
        english(answer.items().get(1).reasons()));
    assertEquals(
        List.of("intent: A [cold] and [lonely] figure in the [first] [light]"),
        marked(answer.items().get(0)));
    assertEquals(List.of("intent: [bleak] harbour [before] [dawn]"), marked(answer.items().get(1)));
  }

  /** The texts of a hit with their marked words in brackets. */
  private static List<String> marked(SearchResult.Hit hit) {
    return hit.why().stream()
        .map(
            why ->
                why.field()
                    + ": "
                    + why.pieces().stream()
                        .map(piece -> piece.marked() ? "[" + piece.text() + "]" : piece.text())
                        .collect(Collectors.joining()))
        .toList();
  }

  @Test
  void aNeighbourInAMoodListStaysBelowTheWordItselfInANote() {
    put(entry("near", "One").moods(List.of("bleak")));
    put(entry("literal", "Two").written(List.of("It felt lonely.")));
    assertEquals(List.of("literal", "near"), found("lonely"));
  }

  @Test
  void aWordInTheTitleCountsMoreThanInANote() {
    put(entry("note", "One").written(List.of("dawn")));
    put(entry("title", "Dawn"));
    assertEquals(List.of("title", "note"), found("dawn"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5.6", "f5.6", "f/5.6", "f 5.6", "F/5.6", "ƒ/5.6", "f/5,6"})
  void spellingsOfAnApertureFindEachOther(String typed) {
    for (String written : List.of("at f5.6", "at f/5.6.", "at f 5.6 then", "read 5.6 there")) {
      put(entry("s" + written.hashCode(), "Setup").intent(written));
    }
    put(entry("other", "Setup").intent("at f/56 or 5 or 6 or f/8"));
    assertEquals(4, found(typed).size());
  }

  @ParameterizedTest
  @CsvSource({
    "1/125,at 1/125 s,at 1/250 s",
    "1/125s,at 1/125,125 steps",
    "400 Ws,a 400 W·s battery head,a 600 W·s head",
    "400,a 400 W·s battery head,a 600 W·s head",
    "400Ws,a 400 W·s battery head,a 600 W·s head",
    "separation light,a hair light,a lamp",
    "hair light,a separation light,a lamp",
    "octabox,an octa,a dish",
    "soft box,a softbox,a dish",
    "softbox,a soft box,a dish",
    "fill-in,fill from the left,a dish",
    "contre-jour,a backlight,a dish",
    "rim,an edge light,a dish",
    "cafe,in the Café,in the barn",
    "harbours,one harbour,one barn",
    "gloaming,at nightfall,at noon",
    "before sunrise,at daybreak,at noon",
    "harbuor,the harbour,the barn",
    "lonley,a bleak place,a barn",
    "silhuette,a silhouette,a barn",
  })
  void whatMeansTheSameIsFoundAndOtherThingsAreNot(String typed, String yes, String no) {
    put(entry("yes", "One").intent(yes));
    put(entry("no", "Two").intent(no));
    assertTrue(found("\"" + no + "\"").contains("no"));
    assertEquals(List.of("yes"), found(typed));
  }

  @Test
  void rolesAreReadInPlainWords() {
    put(entry("a", "One").roles(List.of("HAIR", "KEY", "KEY")));
    assertEquals(
        List.of("light: key"),
        english(ask(Question.of("demo", "key")).items().getFirst().reasons()));
  }

  @Test
  void aSlipIsNamedInTheReason() {
    put(entry("a", "Old harbour"));
    assertEquals(
        List.of("title: harbuor — spelled “harbour”"),
        english(ask(Question.of("demo", "harbuor")).items().getFirst().reasons()));
    assertEquals(
        List.of("title: Old [harbour]"),
        marked(ask(Question.of("demo", "harbuor")).items().getFirst()));
  }

  @Test
  void aKnownWordIsNotTakenForASlip() {
    put(entry("stare", "One").intent("a hard stare"));
    put(entry("stars", "Two").intent("many stars"));
    assertEquals(List.of("stare"), found("stare"));
  }

  @Test
  void quotedPhrasesMustOccur() {
    put(entry("phrase", "One").intent("the old stone bridge"));
    put(entry("words", "Two").intent("a bridge of old and new stone"));
    assertEquals(List.of("phrase"), found("\"old stone bridge\""));
    assertEquals(List.of("phrase"), found("“stone bridge” anything"));
    assertEquals(2, found("old stone bridge\"").size());
  }

  @Test
  void longQuestionsNeedSomeOfTheirWordsOnly() {
    put(entry("some", "Harbour").intent("a crane and a barge"));
    put(entry("one", "Barge"));
    assertEquals(List.of("some"), found("harbour crane barge zeppelin walrus trombone"));
  }

  @Test
  void everythingIsListedNewestFirstWithoutWords() {
    put(entry("old", "A").changedAt(Instant.ofEpochSecond(10)));
    put(entry("new", "B").changedAt(Instant.ofEpochSecond(30)));
    put(entry("middle", "C").changedAt(Instant.ofEpochSecond(20)));
    for (String nothing : List.of("", "  ", "the of and", "!?", "\"\"", "\u0000\u0007")) {
      assertEquals(List.of("new", "middle", "old"), found(nothing));
    }
  }

  @Test
  void countsOfAFilterAreTakenUnderTheOtherFilters() {
    put(
        entry("1", "Pier")
            .moods(List.of("Lonely", "cold"))
            .placeName("North quay")
            .placeKind("harbour"));
    put(entry("2", "Pier").moods(List.of("lonely")).placeName("Mill").placeKind("factory"));
    put(entry("3", "Pier").moods(List.of("tender")).placeName("North quay").placeKind("harbour"));
    put(entry("4", "Barn").moods(List.of("lonely")).placeName("North quay").placeKind("harbour"));

    Answer answer =
        ask(
            Question.of("demo", "pier")
                .and(
                    Filter.OneOf.of(Trait.MOOD, "LONELY"),
                    Filter.OneOf.of(Trait.PLACE_KIND, "harbour")));

    assertEquals(List.of("1"), ids(answer));
    assertEquals(1, answer.total());
    assertEquals(
        Map.of("lonely", 1L, "cold", 1L, "tender", 1L), answer.facets().byValue(Trait.MOOD));
    assertEquals(Map.of("harbour", 1L, "factory", 1L), answer.facets().byValue(Trait.PLACE_KIND));
    assertEquals(Map.of("North quay", 1L), answer.facets().byValue(Trait.PLACE));
    assertEquals(
        List.of("lonely", "cold", "tender"),
        List.copyOf(ask(Question.of("demo", "")).facets().byValue(Trait.MOOD).sequencedKeySet()));
  }

  @Test
  void onlyTheGivenSetupsAreFound() {
    put(entry("1", "Pier"));
    put(entry("2", "Pier"));
    assertEquals(
        List.of("2"), ids(ask(Question.of("demo", "pier").withOnlyThese(Set.of("2", "9")))));
    assertEquals(0, ask(Question.of("demo", "").withOnlyThese(Set.of())).total());
  }

  @Test
  void anotherStudioShowsNowhere() {
    put(entry("1", "Pier").moods(List.of("calm")));
    index.put(
        IndexEntry.of("rival", "1", 1, "Secret pier")
            .moods(List.of("secret"))
            .placeName("Vault")
            .placeKind("cellar")
            .build());
    index.refresh();
    for (String text : List.of("", "pier", "secret", "secrte", "\"secret pier\"")) {
      Answer answer = ask(Question.of("demo", text));
      assertTrue(answer.total() <= 1);
      assertTrue(answer.facets().byValue(Trait.MOOD).keySet().stream().allMatch("calm"::equals));
      assertTrue(answer.facets().byValue(Trait.PLACE).isEmpty());
      assertTrue(answer.facets().byValue(Trait.PLACE_KIND).isEmpty());
    }
    assertEquals(List.of(), found("secret"));
    assertEquals(
        List.of(),
        ids(ask(Question.of("demo", "pier").and(Filter.OneOf.of(Trait.PLACE, "Vault")))));
  }

  @Test
  void anotherStudioDoesNotMoveTheRanking() {
    put(entry("1", "Pier and crane"));
    put(entry("2", "Pier"));
    List<Hit> before = ask(Question.of("demo", "pier crane")).items();
    for (int i = 0; i < 50; i++) {
      index.put(IndexEntry.of("rival", "r" + i, 1, "Crane crane crane").build());
    }
    index.refresh();
    assertEquals(before, ask(Question.of("demo", "pier crane")).items());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "pier crane", "lonely"})
  void pagesNeitherSkipNorRepeatWhileOthersWrite(String text) {
    Set<String> before = new HashSet<>();
    for (int i = 0; i < 60; i++) {
      String id = "s%02d".formatted(i);
      before.add(id);
      index.put(
          entry(id, i % 3 == 0 ? "Pier with a crane" : "Pier")
              .intent("lonely ".repeat(1 + i % 4))
              .changedAt(Instant.ofEpochSecond(i % 7))
              .build());
    }
    index.refresh();
    List<String> seen = new ArrayList<>();
    Optional<String> cursor = Optional.empty();
    int page = 0;
    do {
      Question question = Question.of("demo", text).withLimit(7);
      Answer answer = ask(cursor.map(question::withCursor).orElse(question));
      seen.addAll(ids(answer));
      cursor = answer.next();
      if (page < 12) {
        for (int i = 0; i < 20; i++) {
          index.put(
              entry("new" + page + "-" + i, "Crane, crane")
                  .changedAt(Instant.ofEpochSecond(i))
                  .build());
        }
        index.delete("demo", "new" + page + "-3", 1);
      }
      index.refresh();
      page++;
    } while (cursor.isPresent());

    assertEquals(seen.size(), new HashSet<>(seen).size(), "no setup comes twice");
    assertTrue(seen.containsAll(before), "no setup is skipped");
  }

  @Test
  void aCursorOfAnotherQuestionIsRefused() {
    for (int i = 0; i < 5; i++) {
      put(entry("s" + i, "Pier"));
    }
    Question question = Question.of("demo", "pier").withLimit(2);
    String cursor = ask(question).next().orElseThrow();
    assertInstanceOf(Answer.class, search.search(question.withCursor(cursor)));
    for (Question other :
        List.of(
            Question.of("demo", "crane").withCursor(cursor),
            Question.of("rival", "pier").withCursor(cursor),
            question.and(Filter.OneOf.of(Trait.MOOD, "calm")).withCursor(cursor),
            question.withCursor(""),
            question.withCursor("%%%"),
            question.withCursor(cursor.substring(1)),
            question.withCursor(cursor + "AAAA"),
            question.withCursor("A".repeat(100_000)))) {
      assertInstanceOf(SearchResult.UnreadableCursor.class, search.search(other));
    }
  }

  @Test
  void theLimitHasBounds() {
    assertThrows(IllegalArgumentException.class, () -> Question.of("demo", "").withLimit(0));
    assertThrows(IllegalArgumentException.class, () -> Question.of("demo", "").withLimit(101));
  }

  private void put(IndexEntry.Builder entry) {
    index.put(entry.build());
    index.refresh();
  }

  private static IndexEntry.Builder entry(String setup, String title) {
    return IndexEntry.of("demo", setup, 1, title);
  }

  private Answer ask(Question question) {
    return assertInstanceOf(Answer.class, search.search(question));
  }

  private List<String> found(String text) {
    return ids(ask(Question.of("demo", text)));
  }

  private static List<String> ids(Answer answer) {
    return answer.items().stream().map(Hit::setup).toList();
  }
}
