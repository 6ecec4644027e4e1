package lampwright.setup.reacting;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;

/**
 * How far something then is from where the setup had it against the shooting exposure.
 *
 * @param light absent for the ambient
 * @param stops plus is brighter in the picture than it was, minus darker
 */
public record Miss(Optional<LightId> light, Stops stops) {

  /** Nearer than this to where it was nobody turns a dial: a third of a stop. */
  public static final Stops TOLERANCE = Stops.THIRD;

  /** Rounding of doubles, in stops. */
  private static final double ROUNDING = 1e-9;

  static Miss ofLight(LightId light, Stops stops) {
    return new Miss(Optional.of(light), stops);
  }

  static Miss ofAmbient(Stops stops) {
    return new Miss(Optional.empty(), stops);
  }

  /** Asks whether it is within a third of a stop of where it was. */
  public boolean isHeld() {
    return Math.abs(stops.value()) <= TOLERANCE.value() + ROUNDING;
  }
}
