package lampwright.setup.adapting;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * A change that would help, checked by solving again with it.
 *
 * @param light the light it is for; absent where it is for all
 * @param words what to do
 * @param leaves by how much the light still misses its level with it; absent where the light is
 *     given up
 */
public record Remedy(Kind kind, Optional<LightId> light, Said words, Optional<Stops> leaves) {

  /** The kinds, smallest change first. */
  public enum Kind {
    CLOSER,
    LOWER,
    FARTHER,
    OTHER_MODIFIER,
    WIDER_APERTURE,
    HIGHER_ISO,
    DIM,
    MORE_HEADS,
    MORE_POPS,
    ONE_MORE_HEAD,
    OTHER_STAND,
    GIVE_UP,
    KNOW_ITS_LEVEL
  }
}
