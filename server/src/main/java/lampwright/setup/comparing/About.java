package lampwright.setup.comparing;

import java.util.Locale;
import java.util.Optional;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.Role;

/**
 * What a change is about.
 *
 * @param light where it is one light
 * @param role that light's, before the change where it was there before
 */
public record About(Kind kind, Optional<LightId> light, Optional<Role> role) {

  /** The parts of a setup, as one speaks of them. */
  public enum Kind {
    LIGHT,
    /** The order in which the lights are told. */
    LIGHTS,
    CAMERA,
    EXPOSURE,
    AMBIENT,
    SUBJECT,
    SURFACE,
    OCCASION,
    PLAN,
    BUILD_ORDER,
    TEXT;

    /** The kind as answers write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static About part(Kind kind) {
    return new About(kind, Optional.empty(), Optional.empty());
  }

  static About light(Light light) {
    return new About(Kind.LIGHT, Optional.of(light.id()), Optional.of(light.role()));
  }
}
