package lampwright.search;

/** Slips of the pen: a letter too many, too few, another one, or two neighbours swapped. */
final class Slip {

  private Slip() {}

  /** Whether exactly one slip leads from one word to the other; the first letter must be right. */
  static boolean isOneApart(String a, String b) {
    int difference = a.length() - b.length();
    if (a.isEmpty() || b.isEmpty() || a.equals(b) || Math.abs(difference) > 1) {
      return false;
    }
    int from = 0;
    while (from < Math.min(a.length(), b.length()) && a.charAt(from) == b.charAt(from)) {
      from++;
    }
    if (from == 0) {
      return false;
    }
    if (difference > 0) {
      return a.substring(from + 1).equals(b.substring(from));
    }
    if (difference < 0) {
      return b.substring(from + 1).equals(a.substring(from));
    }
    if (a.substring(from + 1).equals(b.substring(from + 1))) {
      return true;
    }
    return a.length() > from + 1
        && a.charAt(from) == b.charAt(from + 1)
        && a.charAt(from + 1) == b.charAt(from)
        && a.substring(from + 2).equals(b.substring(from + 2));
  }
}
