package lampwright.setup.without;

import lampwright.setup.Light;
import lampwright.setup.Subject;
import lampwright.setup.Target;

/** Whose level a meter takes, and how it is held there. */
public sealed interface Metered {

  /** A light's target, the meter held as for that light alone. */
  record ForLight(Light light) implements Metered {}

  /** A target, the meter held toward the camera, or on the surface where the target is one. */
  record AtTarget(Target target) implements Metered {}

  /** A subject on which no target is, about the face, the meter held toward the camera. */
  record AtSubject(Subject subject) implements Metered {}
}
