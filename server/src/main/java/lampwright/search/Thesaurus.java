package lampwright.search;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which words may stand for which. The word lists are the project's own; a line is a family, its
 * members parted by commas, each a word or several. They are looked up when a question is asked, so
 * a new word needs no new index.
 */
final class Thesaurus {

  /** Words of the trade: two names of one thing. */
  static final float SAME_THING = 0.7f;

  /**
   * Words of mood: neighbours. Low enough that a neighbour in a title (weight 4) stays below the
   * word itself in a note of middling length (weight 1).
   */
  static final float NEIGHBOUR = 0.12f;

  private final Map<Phrase, Map<Phrase, Float>> alternatives = new HashMap<>();
  private final Map<String, Integer> longestFrom = new HashMap<>();
  private final Map<String, Phrase> spelled = new HashMap<>();

  private Thesaurus() {}

  static Thesaurus load(Words words) {
    Thesaurus thesaurus = new Thesaurus();
    thesaurus.read(words, "trade-words.txt", SAME_THING);
    thesaurus.read(words, "mood-words.txt", NEIGHBOUR);
    return thesaurus;
  }

  /** What may stand for the phrase, with its weight below 1. */
  Map<Phrase, Float> alternativesOf(Phrase phrase) {
    return alternatives.getOrDefault(phrase, Map.of());
  }

  /** Whether it is the trade's name of a thing, rather than a word of mood. */
  boolean isOfTheTrade(Phrase phrase) {
    return alternativesOf(phrase).containsValue(SAME_THING);
  }

  boolean knows(Phrase phrase) {
    return alternatives.containsKey(phrase);
  }

  /** How many words the longest known phrase has that starts with this one; at least 1. */
  int longestFrom(String term) {
    return longestFrom.getOrDefault(term, 1);
  }

  /**
   * A single known word one slip of the pen away.
   *
   * @param spoken as it was typed: stems hide slips
   */
  Optional<Phrase> findMisspelt(String spoken) {
    String typed = spoken.toLowerCase(Locale.ROOT);
    return spelled.entrySet().stream()
        .filter(known -> Slip.isOneApart(known.getKey(), typed))
        .min(Map.Entry.comparingByKey())
        .map(Map.Entry::getValue);
  }

  /** The families of one list as written, for the tests of the lists. */
  static List<List<String>> families(String resource) {
    try (InputStream in = Thesaurus.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(
            "The word list " + resource + " is missing from the build.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .map(line -> List.of(line.split("\\s*,\\s*")))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(Words words, String resource, float weight) {
    for (List<String> family : families(resource)) {
      List<Phrase> members = new ArrayList<>();
      for (String member : family) {
        List<Words.Word> parts = words.of(member);
        if (parts.isEmpty()) {
          throw new IllegalStateException(
              "In "
                  + resource
                  + " the word \""
                  + member
                  + "\" holds nothing that the index keeps.");
        }
        Phrase phrase = Phrase.of(parts);
        members.add(phrase);
        if (phrase.isOneWord()) {
          spelled.put(member.toLowerCase(Locale.ROOT), phrase);
        }
      }
      for (Phrase member : members) {
        longestFrom.merge(member.terms().getFirst(), member.terms().size(), Math::max);
        Map<Phrase, Float> others =
            alternatives.computeIfAbsent(member, _ -> new LinkedHashMap<>());
        for (Phrase other : members) {
          if (!other.equals(member)) {
            others.merge(other, weight, Math::max);
          }
        }
      }
    }
  }
}
