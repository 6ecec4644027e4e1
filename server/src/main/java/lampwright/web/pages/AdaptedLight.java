package lampwright.web.pages;

import lampwright.drawing.Svg;

/**
 * One light, as it was shot and as this kit makes it.
 *
 * @param was as it was shot
 * @param now as this kit makes it
 * @param ruler dot as shot, bar this kit
 * @param off this kit's expected reading against the one that was shot
 * @param notes what else changed ("softer: 18° instead of 12°"); may be empty
 */
public record AdaptedLight(
    int number, String role, Means was, Means now, Svg ruler, Deviation off, String notes) {

  /**
   * How a light is made.
   *
   * @param gear head, modifier and gel in words
   * @param power as the head shows it
   * @param reading what the meter gave, or should give
   * @param known how that is known
   */
  public record Means(String gear, String power, String reading, Known known) {}
}
