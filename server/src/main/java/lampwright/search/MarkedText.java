package lampwright.search;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A text of a setup, as its author wrote it, with the words marked that a search found it by.
 *
 * @param field which text it is, in a word: {@code intent}
 * @param text all of it
 * @param marks the marked words, in their order, none touching another
 */
public record MarkedText(String field, String text, List<Mark> marks) {

  private static final String CUT = "…";

  /**
   * A piece of a text: in UTF-16 units, as Java and JavaScript count.
   *
   * @param from its first
   * @param to behind its last
   */
  public record Mark(int from, int to) {}

  /** A text in pieces, to be written one after the other. */
  public record Piece(String text, boolean marked) {}

  public MarkedText {
    marks = joined(marks, text.length());
  }

  /** The same with more marks. */
  MarkedText and(List<Mark> more) {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(more);
    return new MarkedText(field, text, all);
  }

  /** Marked and plain pieces in turn; together they are the text. */
  public List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    for (Mark mark : marks) {
      if (mark.from() > at) {
        pieces.add(new Piece(text.substring(at, mark.from()), false));
      }
      pieces.add(new Piece(text.substring(mark.from(), mark.to()), true));
      at = mark.to();
    }
    if (at < text.length()) {
      pieces.add(new Piece(text.substring(at), false));
    }
    return pieces;
  }

  /**
   * The part around the first mark, cut between words, with an ellipsis where something is left
   * out.
   *
   * @param longest how many characters of the text at most, more than the longest word
   */
  public MarkedText passage(int longest) {
    if (text.length() <= longest || marks.isEmpty()) {
      return this;
    }
    Mark first = marks.getFirst();
    BreakIterator words = BreakIterator.getWordInstance(Locale.ROOT);
    words.setText(text);
    int before = Math.max(0, (longest - (first.to() - first.from())) / 2);
    int from = Math.min(Math.max(0, first.from() - before), text.length() - longest);
    int start = from == 0 ? 0 : Math.min(first.from(), words.following(from - 1));
    int end = Math.min(text.length(), start + longest);
    if (end < text.length()) {
      int between = words.isBoundary(end) ? end : words.preceding(end);
      end = Math.max(Math.min(first.to(), end), between);
    }
    while (end > first.to() && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    while (start < first.from() && Character.isWhitespace(text.charAt(start))) {
      start++;
    }
    String left = start > 0 ? CUT : "";
    String right = end < text.length() ? CUT : "";
    int begin = start;
    int last = end;
    int moved = left.length() - begin;
    List<Mark> kept =
        marks.stream()
            .filter(mark -> mark.from() >= begin && mark.to() <= last)
            .map(mark -> new Mark(mark.from() + moved, mark.to() + moved))
            .toList();
    return new MarkedText(field, left + text.substring(start, end) + right, kept);
  }

  /**
   * In order, those that touch made one; a word that is a figure too is found at one place twice.
   */
  private static List<Mark> joined(List<Mark> marks, int length) {
    List<Mark> joined = new ArrayList<>();
    for (Mark mark : marks.stream().sorted(Comparator.comparingInt(Mark::from)).toList()) {
      if (mark.from() < 0 || mark.to() > length || mark.from() >= mark.to()) {
        throw new IllegalArgumentException(mark + " must be a piece of the text.");
      }
      if (!joined.isEmpty() && mark.from() <= joined.getLast().to()) {
        Mark last = joined.removeLast();
        joined.add(new Mark(last.from(), Math.max(last.to(), mark.to())));
      } else {
        joined.add(mark);
      }
    }
    return List.copyOf(joined);
  }
}
