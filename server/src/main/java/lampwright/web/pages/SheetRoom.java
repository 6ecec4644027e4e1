package lampwright.web.pages;

import java.util.List;
import lampwright.setup.SetupDocument;

/**
 * How much a field sheet says, so that it stays on two sides: the rule by which it is shortened.
 * What was left out is counted on the sheet; dangers are named before anything else is.
 *
 * @param lights in rows
 * @param whyLetters of what is done and why in each step; 0 leaves that out for lights
 * @param cues the marks
 * @param cueLetters of what is done at a mark
 * @param changes for as many happenings
 * @param changeLetters of what is then off, and what it costs
 * @param packing kinds of gear
 * @param cautions of them
 * @param cautionLetters of each
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
    int cautions,
    int cautionLetters,
    double planPt) {

  /** From the roomiest on. */
  private static final List<SheetRoom> ALL =
      List.of(
          new SheetRoom(3, 220, 12, 240, 14, 200, 40, 12, 400, 340),
          new SheetRoom(5, 150, 10, 170, 12, 140, 30, 12, 300, 285),
          new SheetRoom(7, 110, 8, 130, 10, 110, 26, 10, 240, 262),
          new SheetRoom(12, 0, 8, 100, 14, 90, 22, 8, 180, 262),
          new SheetRoom(12, 0, 6, 80, 14, 60, 16, 8, 120, 240),
          new SheetRoom(12, 0, 4, 60, 8, 50, 10, 8, 70, 220));

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

  /** The text, cut at a word with dots where it is longer than that. */
  static String cut(String text, int letters) {
    if (text.length() <= letters) {
      return text;
    }
    String head = text.substring(0, letters);
    int space = head.lastIndexOf(' ');
    return (space > letters / 2 ? head.substring(0, space) : head).stripTrailing() + " …";
  }
}
