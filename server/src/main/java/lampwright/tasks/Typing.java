package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;

/**
 * A search that is being typed, cut before what is to be completed.
 *
 * @param before what stays as it is
 * @param beginning what is to be completed
 */
record Typing(String before, String beginning) {

  /** Names of more words are rarely typed to the end. */
  private static final int MOST_WORDS = 3;

  /** Whether a bracket is open: it is then completed. */
  static boolean isInBracket(String text) {
    return text.lastIndexOf('[') > text.lastIndexOf(']');
  }

  /** The search cut before its open bracket. */
  static Typing ofBracket(String text) {
    int open = text.lastIndexOf('[');
    return new Typing(text.substring(0, open).strip(), text.substring(open + 1).stripLeading());
  }

  /** The search cut before its last words, the most of them first. */
  static List<Typing> ofWords(String text) {
    List<Typing> cuts = new ArrayList<>();
    String open = text.substring(text.lastIndexOf(']') + 1);
    String closed = text.substring(0, text.length() - open.length());
    int at = open.length();
    for (int words = 0; words < MOST_WORDS && at > 0; words++) {
      at = open.stripTrailing().lastIndexOf(' ', at - 1);
      String beginning = open.substring(at + 1).strip();
      if (!beginning.isEmpty()) {
        cuts.addFirst(new Typing((closed + open.substring(0, at + 1)).strip(), beginning));
      }
    }
    return cuts.stream().distinct().toList();
  }

  /** The search with something in the place of what was begun. */
  String with(String completed) {
    return before.isEmpty() ? completed : before + " " + completed;
  }
}
