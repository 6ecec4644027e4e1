package lampwright.web.pages;

import java.util.List;
import lampwright.setup.SetupDocument;

/**
 * How much a field sheet says, so that it stays on two sides: the rule by which it is shortened.
 * What was left out is counted on the sheet; dangers are named before anything else is.
 *
 * @param lights that it is for: with more, it is not tried
 * @param whyLetters of what is done and why in each step; 0 leaves that out for lights
 * @param cues the marks
 * @param cueLetters of what is done at a mark
 * @param changes for as many happenings
 * @param changeLetters of what is then off, and what it costs
 * @param packing kinds of gear
 * @param cautionLetters of all cautions together; those beyond are named, not explained
 * @param noteLines to write on
 * @param tight a light on two lines instead of three
 * @param planPt how tall the drawings may be
 */
record SheetRoom(
    int lights,
    int whyLetters,
    int cues,
    int cueLetters,
    int changes,
    int changeLetters,
    int packing,
    int cautionLetters,
    int noteLines,
    boolean tight,
    double planPt) {

  /** From the roomiest on. */
  private static final List<SheetRoom> ALL =
      List.of(
          new SheetRoom(3, 220, 12, 240, 14, 200, 40, 9000, 2, false, 340),
          new SheetRoom(5, 150, 10, 170, 14, 140, 30, 5000, 2, false, 285),
          new SheetRoom(7, 110, 8, 130, 14, 110, 26, 4000, 2, false, 262),
          new SheetRoom(12, 0, 8, 100, 14, 90, 26, 4000, 2, false, 262),
          new SheetRoom(12, 0, 8, 100, 14, 90, 26, 4000, 2, true, 250),
          new SheetRoom(12, 0, 6, 80, 14, 60, 20, 4000, 1, true, 250),
          new SheetRoom(12, 0, 4, 60, 10, 50, 16, 3000, 0, true, 250),
          new SheetRoom(12, 0, 4, 60, 8, 50, 12, 3000, 0, true, 250),
          new SheetRoom(12, 0, 3, 50, 5, 40, 8, 3000, 0, true, 250),
          new SheetRoom(12, 0, 3, 50, 4, 40, 6, 3000, 0, true, 250),
          new SheetRoom(12, 0, 2, 40, 3, 40, 4, 2400, 0, true, 230),
          new SheetRoom(12, 0, 2, 40, 3, 40, 2, 2000, 0, true, 200),
          new SheetRoom(12, 0, 0, 0, 2, 40, 0, 1200, 0, true, 180));

  /** The number of the first that has room for a setup's lights, to be tried first. */
  static int firstFor(SetupDocument setup) {
    for (int i = 0; i < ALL.size(); i++) {
      if (setup.lights().size() <= ALL.get(i).lights()) {
        return i;
      }
    }
    return ALL.size() - 1;
  }

  /** The one with a number, or the tightest. */
  static SheetRoom of(int number) {
    return ALL.get(Math.min(number, ALL.size() - 1));
  }

  /** Asks whether nothing is tighter. */
  static boolean isLast(int number) {
    return number >= ALL.size() - 1;
  }

  /** The text, cut with dots where it is longer than that: after a sentence, or at a word. */
  static String cut(String text, int letters) {
    if (text.length() <= letters) {
      return text;
    }
    String head = text.substring(0, letters);
    int sentence = head.lastIndexOf(". ");
    if (sentence > letters / 4) {
      return head.substring(0, sentence + 1) + " …";
    }
    int space = head.lastIndexOf(' ');
    return (space > letters / 2 ? head.substring(0, space) : head).stripTrailing() + " …";
  }
}
