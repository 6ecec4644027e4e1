package lampwright.setup.adapting;

import lampwright.setup.Role;

/**
 * What an adaptation's cost is made of. Every weight turns its matter into stops-like units, so
 * that costs can be added and argued about.
 *
 * @param ambient for a stop by which the ambient's offset differs from the setup's
 * @param depth for a stop by which the aperture differs from the one with the setup's depth of
 *     field
 * @param time for a stop by which the shutter time differs from the setup's
 * @param iso for a stop of ISO above the body's lowest
 * @param framing for a doubling of what the lens takes in, or a halving
 * @param softness for a doubling or halving of a light's size as its target sees it
 * @param colour for a hundred mired by which a light's gels differ
 * @param evenness for a stop that the shutter takes from the frame's edge, times the light's role
 * @param carryPerKg for a kilogram of head and modifier
 * @param pacePerSecond for a second of the longest wait from frame to frame
 * @param handling for one more head or flash than the setup has on a light, or a light that is
 *     moved
 * @param touch for a dial that must be touched against the setup as it stands
 * @param givenUp a light that is given up counts as a miss by so many stops
 */
public record Weights(
    double ambient,
    double depth,
    double time,
    double iso,
    double framing,
    double softness,
    double colour,
    double evenness,
    double carryPerKg,
    double pacePerSecond,
    double handling,
    double touch,
    double givenUp) {

  /** What matters most today. */
  public enum Preset {
    CLOSEST_LOOK,
    LEAST_TO_CARRY,
    FASTEST_PACE,
    LOWEST_ISO,
    /** Everything is set up and something changed: what to do now with the fewest changes. */
    FEWEST_DIALS;

    /** The weights that express it. */
    public Weights weights() {
      return switch (this) {
        case CLOSEST_LOOK -> of(1.5, 0.5, 0.25, 0.2, 1, 0.005, 0.01, 0);
        case LEAST_TO_CARRY -> of(1, 0.4, 0.25, 0.2, 0.6, 0.3, 0.01, 0);
        case FASTEST_PACE -> of(1, 0.4, 0.25, 0.1, 0.6, 0.005, 1, 0);
        case LOWEST_ISO -> of(1, 0.3, 0.15, 2, 1, 0.005, 0.01, 0);
        case FEWEST_DIALS -> of(1.5, 0.5, 0.25, 0.2, 1, 0, 0, 0.3);
      };
    }

    private static Weights of(
        double ambient,
        double depth,
        double time,
        double iso,
        double softness,
        double carryPerKg,
        double pacePerSecond,
        double touch) {
      return new Weights(
          ambient,
          depth,
          time,
          iso,
          USUAL_FRAMING,
          softness,
          USUAL_COLOUR,
          USUAL_EVENNESS,
          carryPerKg,
          pacePerSecond,
          USUAL_HANDLING,
          touch,
          USUAL_GIVEN_UP);
    }
  }

  private static final double USUAL_FRAMING = 2;
  private static final double USUAL_COLOUR = 1;
  private static final double USUAL_EVENNESS = 0.3;
  private static final double USUAL_HANDLING = 0.25;
  private static final double USUAL_GIVEN_UP = 8;

  /** For a stop by which a light of this role misses its level. */
  public static double ofRole(Role role) {
    return switch (role) {
      case KEY -> 3;
      case FILL -> 1.5;
      case BACK, RIM, KICKER, HAIR, BACKGROUND -> 1;
      case ACCENT -> 0.75;
    };
  }

  /** A moving subject makes the shutter time part of the look. */
  private static final double TIME_MATTERS_MORE_WITH_MOVEMENT = 3;

  /** For a stop by which the shutter time differs, where a subject moves or none does. */
  public double ofTime(boolean moving) {
    return time * (moving ? TIME_MATTERS_MORE_WITH_MOVEMENT : 1);
  }

  /** Up to so many stops the ambient makes the same picture with another sky. */
  private static final double SAME_PICTURE_STOPS = 1.5;

  /**
   * How much a change of the ambient's offset counts: each stop once, and what lies beyond a stop
   * and a half twice, because there the background stops being held down and the picture is
   * another.
   *
   * @param missStops by how much the offset differs, of either sign
   */
  public static double ambientCount(double missStops) {
    double miss = Math.abs(missStops);
    return miss + Math.max(0, miss - SAME_PICTURE_STOPS);
  }
}
