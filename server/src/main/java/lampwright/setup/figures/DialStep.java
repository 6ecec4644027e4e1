package lampwright.setup.figures;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;

/**
 * What one stop on a dial changes at the first target.
 *
 * @param light whose power is turned; absent for the camera's dials
 * @param turned -1 gives less light by this dial: a smaller aperture, a shorter time, a lower ISO,
 *     more neutral density, less power; +1 gives more
 * @param flash how the flash changes in the picture; absent where there is none
 * @param ambient how the ambient changes; absent where it is not known
 * @param total how both together change
 * @param balance how the flash changes against the ambient
 * @param limit why the gear cannot do it, or only in part; absent where it can
 */
public record DialStep(
    Dial dial,
    Optional<LightId> light,
    Stops turned,
    Optional<Stops> flash,
    Optional<Stops> ambient,
    Optional<Stops> total,
    Optional<Stops> balance,
    Optional<String> limit) {

  /** What is turned. */
  public enum Dial {
    APERTURE,
    TIME,
    ISO,
    NEUTRAL_DENSITY,
    POWER
  }
}
