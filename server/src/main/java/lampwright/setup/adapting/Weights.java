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
 * @param softness for a doubling or halving of a light's size as its target sees it
 * @param carryPerKg for a kilogram of head and modifier
 * @param pacePerSecond for a second of recycling
 */
public record Weights(
    double ambient,
    double depth,
    double time,
    double iso,
    double softness,
    double carryPerKg,
    double pacePerSecond) {

  /** What matters most today. */
  public enum Preset {
    CLOSEST_LOOK,
    LEAST_TO_CARRY,
    FASTEST_PACE,
    LOWEST_ISO;

    /** The weights that express it. */
    public Weights weights() {
      return switch (this) {
        case CLOSEST_LOOK -> new Weights(1.5, 0.5, 0.25, 0.2, 1, 0.005, 0.01);
        case LEAST_TO_CARRY -> new Weights(1, 0.4, 0.25, 0.2, 0.6, 0.3, 0.01);
        case FASTEST_PACE -> new Weights(1, 0.4, 0.25, 0.1, 0.6, 0.005, 1);
        case LOWEST_ISO -> new Weights(1, 0.3, 0.15, 2, 1, 0.005, 0.01);
      };
    }
  }

  /** For a stop by which a light of this role misses its level. */
  static double ofRole(Role role) {
    return switch (role) {
      case KEY -> 3;
      case FILL -> 1.5;
      case BACK, RIM, KICKER, HAIR, BACKGROUND -> 1;
      case ACCENT -> 0.75;
    };
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
  static double ambientCount(double missStops) {
    double miss = Math.abs(missStops);
    return miss + Math.max(0, miss - SAME_PICTURE_STOPS);
  }

  /** For a light that is given up: as much as a miss by so many stops. */
  static final double GIVEN_UP_STOPS = 8;
}
