package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordListsTest {

  @ParameterizedTest
  @ValueSource(strings = {"trade-words.txt", "mood-words.txt"})
  void everyFamilyHasSeveralMembersEachOnce(String list) {
    for (List<String> family : Thesaurus.families(list)) {
      assertTrue(family.size() > 1, () -> "alone: " + family);
      assertEquals(family.size(), new HashSet<>(family).size(), () -> "twice in " + family);
      assertTrue(family.stream().noneMatch(String::isBlank), () -> "blank in " + family);
    }
  }

  @Test
  void theMoodVocabularyHasSixtyFamilies() {
    assertTrue(Thesaurus.families("mood-words.txt").size() >= 60);
  }

  @Test
  void everyListedWordIsKnownToTheThesaurus() {
    Words words = new Words();
    Thesaurus thesaurus = Thesaurus.load(words);
    for (String list : List.of("trade-words.txt", "mood-words.txt")) {
      for (List<String> family : Thesaurus.families(list)) {
        for (String member : family) {
          assertTrue(thesaurus.knows(Phrase.of(words.of(member))), member);
        }
      }
    }
  }
}
