package lampwright.drawing;

import lampwright.engine.unit.Bounds;

/** How drawings and their tables write lengths; the one place that knows the person's unit. */
final class Lengths {

  /** Nearer than this a place counts as level with the hit mark: a hand's breadth of tape. */
  private static final double NOTHING_M = 0.005;

  private Lengths() {}

  /** A length on a drawing: to a tenth, and whole from 20 m on, as a long tape is read. */
  static String onDrawing(double metres) {
    return metres >= 20 ? Bounds.rounded(metres, 0) + " m" : Bounds.fixed(metres, 1) + " m";
  }

  /** A length in a table: to a centimetre. */
  static String inTable(double metres) {
    return signed(Bounds.rounded(metres, 2)) + " m";
  }

  /** A figure at a tick of the frame. */
  static String atTick(double metres) {
    return signed(Bounds.rounded(metres, 0));
  }

  /** The unit of the figures at the frame. */
  static String unit() {
    return "m";
  }

  /** Metres to camera right, in words. */
  static String across(double metresRight) {
    return sided(metresRight, "right", "left");
  }

  /** Metres away from the camera, in words. */
  static String away(double metresAway) {
    return sided(metresAway, "beyond", "nearer");
  }

  private static String sided(double metres, String plus, String minus) {
    return Math.abs(metres) < NOTHING_M
        ? "0 m"
        : inTable(Math.abs(metres)) + " " + (metres > 0 ? plus : minus);
  }

  /** With a true minus sign. */
  private static String signed(String number) {
    return number.replace('-', '−');
  }
}
