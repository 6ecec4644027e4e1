package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;

/**
 * One light of a setup.
 *
 * @param number its place in the build order, as on the plan
 * @param role what it is for ("Key")
 * @param gear head, modifier and gel in words
 * @param power as its head shows it
 * @param reading what a meter gives at its target ("f/5.6")
 * @param known how the reading is known
 * @param ruler the reading on the stop ruler
 * @param level the number beside it: stops from the shooting exposure ("−1.7")
 * @param uncertainty of the level, as "±0.3"; empty where none is known
 * @param off how far the reading is from what the model gives, where both are known
 * @param reason why the light is there
 * @param workings how the reading was computed, and what its uncertainty is made of; may be empty
 */
public record SetupLight(
    int number,
    String role,
    String gear,
    String power,
    String reading,
    Known known,
    Svg ruler,
    String level,
    String uncertainty,
    Optional<Deviation> off,
    String reason,
    List<WorkingStep> workings) {

  public SetupLight {
    workings = List.copyOf(workings);
  }
}
