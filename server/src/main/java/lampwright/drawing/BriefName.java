package lampwright.drawing;

/**
 * A name cut down to what a drawing has room for; the table beside the drawing says it in full.
 * People describe as they name ("granite quay wall, wet to the tide line"): the first part is the
 * name.
 */
final class BriefName {

  private static final int LONGEST = 24;

  /** Words that a name cannot well end with. */
  private static final String LOOSE_END = "( (a|an|the|of|on|in|with|and|at|to|for))+$";

  private BriefName() {}

  static String of(String name) {
    String line = name.strip().replaceAll("\\s+", " ");
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    String first = line.split("[,;:(]", 2)[0].strip();
    if (!first.isEmpty() && first.codePointCount(0, first.length()) <= LONGEST) {
      return first;
    }
    String cut = line.substring(0, line.offsetByCodePoints(0, LONGEST - 1));
    int space = cut.lastIndexOf(' ');
    String whole = space > LONGEST / 2 ? cut.substring(0, space) : cut;
    return whole.replaceAll(LOOSE_END, "").strip() + "…";
  }
}
