package lampwright.web.pages;

import java.util.List;
import lampwright.drawing.Svg;
import lampwright.engine.Known;
import lampwright.wording.Deviation;

/**
 * What was really used of a setup against what was planned.
 *
 * @param told who told it, when, and of which revision ("Revision 3, by …")
 * @param note in the words of who was there; may be empty
 * @param lights that were not as planned, or were metered; may be empty
 * @param asPlanned names the others, in a sentence; may be empty
 * @param camera its settings
 */
public record UsedPart(
    String told, String note, List<UsedLight> lights, String asPlanned, List<Setting> camera) {

  public UsedPart {
    lights = List.copyOf(lights);
    camera = List.copyOf(camera);
  }

  /**
   * One light.
   *
   * @param ruler bar as planned, dot as used
   * @param off by how much the light at its target differs
   * @param notes what else differed; may be empty
   */
  public record UsedLight(
      int number, String role, Means planned, Means used, Svg ruler, Deviation off, String notes) {}

  /**
   * How a light is made.
   *
   * @param gear head, modifier and gel in words
   * @param power as its head shows it
   * @param change of the power in stops; empty where it is as planned
   * @param reading at the ISO that was used
   */
  public record Means(String gear, String power, String change, String reading, Known known) {}

  /**
   * One setting of the camera.
   *
   * @param change what it does to the picture ("+1.0 stop"); empty where it is as planned
   */
  public record Setting(String name, String planned, String used, String change) {

    public boolean differs() {
      return !planned.equals(used);
    }
  }
}
