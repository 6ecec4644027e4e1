package lampwright.learning.glossary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.language.Language;
import lampwright.language.PhraseFiles;
import lampwright.language.Phrases;
import lampwright.setup.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The terms of the glossary: nothing is missing in any language, and every way leads somewhere. */
class TermTest {

  private static final List<String> PARTS = List.of("name", "text", "here");

  @ParameterizedTest
  @EnumSource
  void everyTermIsExplainedInEveryLanguageAndNothingElseIs(Language language) {
    Phrases phrases = PhraseFiles.read(language);
    Set<String> wanted =
        Arrays.stream(Term.values())
            .flatMap(term -> PARTS.stream().map(part -> key(term, part)))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> found =
        phrases.keys().stream()
            .filter(key -> key.startsWith("glossary.term."))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(wanted, found);
    wanted.forEach(key -> assertFalse(phrases.of(key).isBlank(), key));
    for (TermGroup group : TermGroup.values()) {
      assertFalse(phrases.of("glossary.group." + group.key()).isBlank());
    }
  }

  @ParameterizedTest
  @EnumSource
  void anExplanationHasOneToThreeSentences(Language language) {
    Phrases phrases = PhraseFiles.read(language);
    for (Term term : Term.values()) {
      String text = phrases.of(key(term, "text"));
      int sentences = text.split("(?<=[.!?]) (?=\\p{Lu})", -1).length;
      assertTrue(sentences <= 3 && text.endsWith("."), term + ": " + text);
    }
  }

  @Test
  void germanSaysItsOwnWords() {
    Phrases english = PhraseFiles.read(Language.ENGLISH);
    Phrases german = PhraseFiles.read(Language.GERMAN);
    for (Term term : Term.values()) {
      assertFalse(
          english.of(key(term, "text")).equals(german.of(key(term, "text"))), term.toString());
    }
  }

  @ParameterizedTest
  @EnumSource
  void namesDiffer(Language language) {
    Phrases phrases = PhraseFiles.read(language);
    Set<String> names = new HashSet<>();
    for (Term term : Term.values()) {
      assertTrue(names.add(phrases.of(key(term, "name"))), term.toString());
    }
  }

  @Test
  void noTwoAnchorsOfThePageAreTheSame() {
    List<String> anchors =
        Stream.concat(
                Arrays.stream(Term.values()).map(Term::anchor),
                Arrays.stream(TermGroup.values()).map(TermGroup::anchor))
            .toList();
    assertEquals(anchors.size(), Set.copyOf(anchors).size());
    anchors.forEach(anchor -> assertTrue(anchor.matches("[a-z0-9-]+"), anchor));
  }

  @ParameterizedTest
  @EnumSource
  void everyTermLeadsToOthersAndNotToItself(Term term) {
    assertFalse(term.seeAlso().isEmpty());
    assertFalse(term.seeAlso().contains(term));
    assertEquals(term.seeAlso().size(), Set.copyOf(term.seeAlso()).size());
  }

  @Test
  void whoFollowsTheWaysFromTheStopGetsToEveryTerm() {
    Set<Term> reached = EnumSet.of(Term.STOP);
    Deque<Term> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      for (Term next : open.remove().seeAlso()) {
        if (reached.add(next)) {
          open.add(next);
        }
      }
    }
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(reached)), EnumSet.noneOf(Term.class));
  }

  @ParameterizedTest
  @EnumSource
  void everyRoleOfALightIsExplained(Role role) {
    assertEquals(role.name(), Term.of(role).name());
    assertEquals(TermGroup.LIGHTS_AND_ROLES, Term.of(role).group());
  }

  @Test
  void anAddressLeadsToTheTerm() {
    assertEquals("/glossary#ambient-offset", Term.AMBIENT_OFFSET.path());
  }

  private static String key(Term term, String part) {
    return "glossary.term." + term.key() + "." + part;
  }
}
