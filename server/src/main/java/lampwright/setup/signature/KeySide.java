package lampwright.setup.signature;

import java.util.Locale;
import lampwright.engine.unit.Degrees;

/** On which side of the nose a light stands, as one sees who looks the subject in the face. */
public enum KeySide {
  LEFT,
  RIGHT,
  /** Straight before or behind, to half a degree. */
  NEITHER;

  private static final double STRAIGHT_DEG = 0.5;

  /**
   * The side of an azimuth from the nose.
   *
   * @param fromNose positive to camera right for a face that looks at the camera
   */
  static KeySide of(Degrees fromNose) {
    double aside = fromNose.value();
    if (Math.abs(aside) < STRAIGHT_DEG || Math.abs(aside) > 180 - STRAIGHT_DEG) {
      return NEITHER;
    }
    return aside < 0 ? LEFT : RIGHT;
  }

  /** "left", "right", "neither". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
