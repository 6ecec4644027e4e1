package lampwright.engine.beam;

import java.util.ArrayList;
import java.util.List;

/** The lines of a text, whichever way they end, without space around them. */
record FileLines(List<String> lines) {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  static FileLines of(String text) {
    List<String> lines = new ArrayList<>();
    int begin = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
    for (int i = begin; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        lines.add(text.substring(begin, i).trim());
        if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
          i++;
        }
        begin = i + 1;
      }
    }
    lines.add(text.substring(begin).trim());
    return new FileLines(lines);
  }

  /** Returns how many there are, at least one. */
  int count() {
    return lines.size();
  }

  /**
   * Returns one of them.
   *
   * @param number from 1
   */
  String get(int number) {
    return lines.get(number - 1);
  }
}
