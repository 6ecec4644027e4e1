package lampwright.search.filter;

import java.util.ArrayList;
import java.util.List;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * A search as somebody typed it, with its brackets read. Brackets inside a phrase in quotation
 * marks are words like any other.
 *
 * @param words what stands outside of the brackets
 * @param filters what stands in them, in their order
 * @param unclear brackets that say nothing that is known
 */
public record Asked(String words, List<Filter> filters, List<Unclear> unclear) {

  private static final int LONGEST_QUOTE = 60;

  public Asked {
    filters = List.copyOf(filters);
    unclear = List.copyOf(unclear);
  }

  /**
   * A bracket that could not be read.
   *
   * @param at its place in the text, counted from 1
   * @param bracket as it was written, with its brackets
   * @param line what is wrong
   */
  public record Unclear(int at, String bracket, Said line) {

    /** Where it stands and what is wrong, in one line. */
    public Said message() {
      String shown = Filter.words(bracket);
      return Said.of(
          "finding.fault.at",
          Filling.text(
              shown.length() > LONGEST_QUOTE ? shown.substring(0, LONGEST_QUOTE) + "…" : shown),
          Filling.number(at, 0),
          line.asFilling());
    }
  }

  /** Reads a search. */
  public static Asked of(String text) {
    StringBuilder words = new StringBuilder();
    List<Filter> filters = new ArrayList<>();
    List<Unclear> unclear = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = at + 1;
      if (text.charAt(at) == '"') {
        end = afterPhrase(text, at);
        words.append(text, at, end);
      } else if (text.charAt(at) == '[') {
        end = afterBracket(text, at);
        words.append(' ');
        read(text, at, end, filters, unclear);
      } else {
        words.append(text.charAt(at));
      }
      at = end;
    }
    return new Asked(words.toString().strip().replaceAll(" {2,}", " "), filters, unclear);
  }

  private static void read(
      String text, int from, int end, List<Filter> filters, List<Unclear> unclear) {
    String bracket = text.substring(from, end);
    int place = text.codePointCount(0, from) + 1;
    if (!bracket.endsWith("]") || bracket.length() < 2) {
      unclear.add(new Unclear(place, bracket, Said.of("finding.fault.open")));
      return;
    }
    switch (FilterReader.read(bracket.substring(1, bracket.length() - 1))) {
      case ReadFilter.Understood(Filter filter) -> filters.add(filter);
      case ReadFilter.Unclear(Said line) -> unclear.add(new Unclear(place, bracket, line));
    }
  }

  /** Behind the phrase that a quotation mark begins; behind the mark where it begins none. */
  private static int afterPhrase(String text, int open) {
    int close = text.indexOf('"', open + 1);
    if (close < 0) {
      return open + 1;
    }
    String inside = text.substring(open + 1, close);
    boolean cutsBracket = inside.lastIndexOf('[') > inside.lastIndexOf(']');
    return cutsBracket ? open + 1 : close + 1;
  }

  /** Behind the bracket that is opened here: quotation marks in it may hold brackets. */
  private static int afterBracket(String text, int open) {
    boolean quoted = false;
    for (int at = open + 1; at < text.length(); at++) {
      char letter = text.charAt(at);
      if (letter == '"') {
        quoted = !quoted;
      } else if (letter == ']' && !quoted) {
        return at + 1;
      }
    }
    return text.length();
  }
}
