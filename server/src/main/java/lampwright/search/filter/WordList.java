package lampwright.search.filter;

import java.util.ArrayList;
import java.util.List;
import lampwright.language.Filling;
import lampwright.language.Said;

/** Reads words that are joined by "or", each bare or in quotation marks. */
sealed interface WordList {

  /** At least one word. */
  record Of(List<String> words) implements WordList {}

  /** Something else, with what is wrong. */
  record Faulty(Said line) implements WordList {}

  static WordList read(String text) {
    List<String> words = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = text.charAt(at) == '"' ? closingQuote(text, at) : endOfBare(text, at);
      if (end < 0) {
        return new Faulty(Said.of("finding.fault.quote"));
      }
      String piece = text.substring(at, end).strip();
      String word = Filter.words(unquoted(piece));
      if (word.isEmpty()) {
        return new Faulty(Said.of("finding.fault.wordMissing"));
      }
      if (!piece.startsWith("\"") && (piece.indexOf('"') >= 0 || piece.indexOf('[') >= 0)) {
        return new Faulty(Said.of("finding.fault.inQuotes"));
      }
      words.add(word);
      at = afterGap(text, end);
      if (at < text.length()) {
        int next = afterOr(text, at);
        if (next < 0 || next >= text.length()) {
          return new Faulty(Said.of("finding.fault.joined"));
        }
        at = next;
      }
    }
    if (words.isEmpty()) {
      return new Faulty(Said.of("finding.fault.noWords"));
    }
    if (words.stream().distinct().count() > Filter.MOST_WORDS) {
      return new Faulty(Said.of("finding.fault.mostWords", Filling.number(Filter.MOST_WORDS, 0)));
    }
    return new Of(List.copyOf(words));
  }

  /** Behind the quotation mark that closes one; a doubled one closes nothing. */
  private static int closingQuote(String text, int open) {
    int at = open + 1;
    while (at < text.length()) {
      if (text.charAt(at) == '"') {
        if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
          at++;
        } else {
          return at + 1;
        }
      }
      at++;
    }
    return -1;
  }

  private static int endOfBare(String text, int from) {
    for (int at = from; at < text.length(); at++) {
      if (Character.isWhitespace(text.charAt(at)) && afterOr(text, afterGap(text, at)) >= 0) {
        return at;
      }
    }
    return text.length();
  }

  private static int afterGap(String text, int from) {
    int at = from;
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Behind an "or" with a gap after it that begins here, or -1. */
  private static int afterOr(String text, int at) {
    boolean or =
        text.regionMatches(true, at, "or", 0, 2)
            && (at + 2 >= text.length() || Character.isWhitespace(text.charAt(at + 2)));
    return or ? afterGap(text, at + 2) : -1;
  }

  private static String unquoted(String piece) {
    if (piece.startsWith("\"")) {
      return piece.substring(1, piece.length() - 1).replace("\"\"", "\"");
    }
    // As telephones write quotation marks.
    boolean curly = piece.length() > 2 && piece.startsWith("“") && piece.endsWith("”");
    return curly ? piece.substring(1, piece.length() - 1) : piece;
  }
}
