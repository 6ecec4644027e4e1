package lampwright.setup.reacting;

import java.util.List;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * One way in which the heads can stand before any dial is turned: as after what happened, or with a
 * head put in a dead one's place.
 *
 * @param setup with the heads so
 * @param fixed what was done for it; the power in it is not chosen yet
 * @param lights whose level must hold
 * @param givenUp lights that should shine and do not
 * @param loss of what is given up, in weighted stops
 */
record Stage(
    SetupDocument setup,
    List<Turn.Replacement> fixed,
    List<Aim> lights,
    List<LightId> givenUp,
    double loss) {

  /**
   * A light's level that must hold.
   *
   * @param wantedStops from the shooting exposure, in the picture
   * @param nowStops as the stage has it
   * @param isFree whether its power is set anyhow
   */
  record Aim(LightId light, double wantedStops, double nowStops, boolean isFree) {}

  Stage {
    fixed = List.copyOf(fixed);
    lights = List.copyOf(lights);
    givenUp = List.copyOf(givenUp);
  }

  int dials() {
    return fixed.stream().mapToInt(Turn::dials).sum();
  }
}
