package lampwright.learning.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a drill trains. */
public enum DrillKind {
  /** What a stop is, on each of the three dials. */
  STOPS_BETWEEN,
  /** What two lights give together. */
  LIGHTS_ADD,
  /** The power that keeps a reading when a light moves. */
  POWER_AFTER_MOVE,
  /** The distance that brings a light to a wished level. */
  DISTANCE_FOR_RATIO,
  /** What a change of the ambient, or of a dial, does to the ambient's offset. */
  AMBIENT_CHANGE,
  /** Which light throws a shadow. */
  LIGHT_OF_SHADOW,
  /** Which light a meter misses. */
  LIGHT_OF_READING,
  /** How far a subject moves while it is drawn. */
  BLUR,
  /** The widest aperture that keeps a stretch sharp. */
  APERTURE_FOR_DEPTH,
  /** Frames from a battery. */
  FRAMES_FROM_BATTERY,
  /** Times faster than the shutter can sync. */
  SYNC,
  /** Gels, in mired. */
  GEL_SHIFT,
  /** Where the sun stands for the camera, and how long shadows are. */
  SUN_DIRECTION,
  /** What can hurt in a setup. */
  UNSAFE;

  /** The kind as documents and the database write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind that a word names; empty where there is none. */
  public static Optional<DrillKind> find(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
