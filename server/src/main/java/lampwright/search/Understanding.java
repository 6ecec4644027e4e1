package lampwright.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what somebody typed. Nothing that can be typed is an error: what cannot be a phrase is
 * words, and what holds no word asks for nothing.
 */
final class Understanding {

  /** Enough for anybody's sentence; it bounds the work of one question. */
  static final int MOST_WISHES = 60;

  /** In a whole sentence with more words than these, quotes only stress what they hold. */
  private static final int MOST_BESIDE_QUOTES = 6;

  private static final int SHORTEST_MISSPELT = 5;
  private static final Pattern QUOTED = Pattern.compile("[\"“”„]([^\"“”„]*)[\"“”„]");

  private final Words words;
  private final Thesaurus thesaurus;

  Understanding(Words words, Thesaurus thesaurus) {
    this.words = words;
    this.thesaurus = thesaurus;
  }

  List<Wish> of(String text) {
    Map<Phrase, Wish> wishes = new LinkedHashMap<>();
    StringBuilder unquoted = new StringBuilder();
    Matcher quotes = QUOTED.matcher(text);
    while (quotes.find()) {
      quotes.appendReplacement(unquoted, " . ");
      List<Words.Word> inside = words.of(quotes.group(1));
      if (!inside.isEmpty()) {
        Phrase phrase = Phrase.of(inside);
        wishes.put(
            phrase,
            new Wish(
                quotes.group(1).strip(),
                phrase,
                Map.of(),
                Map.of(),
                true,
                false,
                isEveryday(phrase),
                1));
      }
    }
    quotes.appendTail(unquoted);
    int quoted = wishes.size();
    readWords(unquoted.toString(), wishes);
    if (quoted > 0 && wishes.size() - quoted > MOST_BESIDE_QUOTES) {
      wishes.clear();
      readWords(text, wishes);
    }
    return wishes.values().stream().limit(MOST_WISHES).toList();
  }

  private void readWords(String text, Map<Phrase, Wish> wishes) {
    List<List<Words.Word>> places = places(words.of(text));
    int at = 0;
    while (at < places.size() && wishes.size() < MOST_WISHES) {
      int length = knownPhraseLength(places, at);
      List<Words.Word> taken =
          places.subList(at, at + length).stream().map(List::getFirst).toList();
      Phrase literal = Phrase.of(taken);
      Map<Phrase, Float> alternatives = new LinkedHashMap<>(thesaurus.alternativesOf(literal));
      if (length == 1) {
        for (Words.Word other : places.get(at).subList(1, places.get(at).size())) {
          alternatives.put(Phrase.of(List.of(other)), Thesaurus.SAME_THING);
        }
      }
      String spoken = slice(text, taken.getFirst().start(), taken.getLast().end());
      boolean mayBeMisspelt =
          length == 1
              && spoken.length() >= SHORTEST_MISSPELT
              && spoken.codePoints().allMatch(Character::isLetter)
              && !thesaurus.knows(literal);
      Map<Phrase, Float> guesses = mayBeMisspelt ? guesses(spoken) : Map.of();
      wishes.merge(
          literal,
          new Wish(
              spoken, literal, alternatives, guesses, false, mayBeMisspelt, isEveryday(literal), 1),
          (before, _) -> before.again());
      at += length;
    }
  }

  private boolean isEveryday(Phrase phrase) {
    return !thesaurus.isOfTheTrade(phrase)
        && phrase.terms().stream().noneMatch(term -> term.chars().anyMatch(Character::isDigit));
  }

  private Map<Phrase, Float> guesses(String typed) {
    Map<Phrase, Float> guesses = new LinkedHashMap<>();
    thesaurus
        .findMisspelt(typed)
        .ifPresent(
            meant -> {
              thesaurus
                  .alternativesOf(meant)
                  .keySet()
                  .forEach(other -> guesses.put(other, Thesaurus.NEIGHBOUR / 2));
              guesses.put(meant, Thesaurus.NEIGHBOUR);
            });
    return guesses;
  }

  /** The words of each place in the text; a place holds several where a word has two spellings. */
  private static List<List<Words.Word>> places(List<Words.Word> words) {
    List<List<Words.Word>> places = new ArrayList<>();
    int last = -1;
    for (Words.Word word : words) {
      if (word.position() != last) {
        places.add(new ArrayList<>());
        last = word.position();
      }
      places.getLast().add(word);
    }
    return places;
  }

  private int knownPhraseLength(List<List<Words.Word>> places, int at) {
    int longest = thesaurus.longestFrom(places.get(at).getFirst().term());
    for (int length = Math.min(longest, places.size() - at); length > 1; length--) {
      List<Words.Word> candidate =
          places.subList(at, at + length).stream().map(List::getFirst).toList();
      if (thesaurus.knows(Phrase.of(candidate))) {
        return length;
      }
    }
    return 1;
  }

  private static String slice(String text, int start, int end) {
    int from = Math.clamp(start, 0, text.length());
    return text.substring(from, Math.clamp(end, from, text.length())).strip();
  }
}
