package lampwright.web.pages;

import java.util.List;
import lampwright.drawing.Svg;
import lampwright.engine.Known;
import lampwright.wording.Deviation;

/**
 * One light, as it was shot and as this kit makes it.
 *
 * @param was as it was shot
 * @param now as this kit makes it
 * @param ruler dot as shot, bar this kit
 * @param off this kit's expected reading against the one that was shot
 * @param notes what else changed ("Softer: 18° instead of 12°."); may be empty
 * @param keep asks again with something about this light decided
 * @param kept what is decided about it; the links let it go
 */
public record AdaptedLight(
    int number,
    String role,
    Means was,
    Means now,
    Svg ruler,
    Deviation off,
    String notes,
    List<Link> keep,
    List<Link> kept) {

  public AdaptedLight {
    keep = List.copyOf(keep);
    kept = List.copyOf(kept);
  }

  /**
   * How a light is made.
   *
   * @param gear heads, modifier and gels in words
   * @param power as the head shows it
   * @param times "3 flashes" where it fires more than once for a picture; may be empty
   * @param distance from its face to its target
   * @param moved "0.4 m nearer"; empty where it stands as before
   * @param reading what the meter gave, or should give
   * @param known how that is known
   */
  public record Means(
      String gear,
      String power,
      String times,
      String distance,
      String moved,
      String reading,
      Known known) {}
}
