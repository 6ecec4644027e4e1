package lampwright.engine.power;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.MetresPerSecond;

/**
 * Wind as one sees it: the force number, its mean speeds ten metres above open ground and its signs
 * on land (source beaufort). At a stand's height the mean is less and gusts are more.
 */
public enum Beaufort {
  /** Force 0. */
  CALM(0, 0, "calm", "smoke rises straight up"),
  /** Force 1. */
  LIGHT_AIR(1, 0.3, "light air", "smoke drifts"),
  /** Force 2. */
  LIGHT_BREEZE(2, 1.6, "light breeze", "felt on the face, leaves rustle"),
  /** Force 3. */
  GENTLE_BREEZE(3, 3.4, "gentle breeze", "leaves and twigs move all the time"),
  /** Force 4. */
  MODERATE_BREEZE(4, 5.5, "moderate breeze", "dust and paper lift, small branches move"),
  /** Force 5. */
  FRESH_BREEZE(5, 8.0, "fresh breeze", "small trees sway"),
  /** Force 6. */
  STRONG_BREEZE(6, 10.8, "strong breeze", "large branches move, umbrellas are hard to hold"),
  /** Force 7. */
  NEAR_GALE(7, 13.9, "near gale", "whole trees move, walking is hard"),
  /** Force 8. */
  GALE(8, 17.2, "gale", "twigs break"),
  /** Force 9. */
  STRONG_GALE(9, 20.8, "strong gale", "slight damage to buildings"),
  /** Force 10. */
  STORM(10, 24.5, "storm", "trees are uprooted"),
  /** Force 11. */
  VIOLENT_STORM(11, 28.5, "violent storm", "widespread damage"),
  /** Force 12. */
  HURRICANE(12, 32.7, "hurricane", "devastation");

  private final int number;
  private final double lowestMetresPerSecond;
  private final String tradeName;
  private final String signs;

  Beaufort(int number, double lowestMetresPerSecond, String tradeName, String signs) {
    this.number = number;
    this.lowestMetresPerSecond = lowestMetresPerSecond;
    this.tradeName = tradeName;
    this.signs = signs;
  }

  /** Returns the force of a mean speed. */
  public static Beaufort of(MetresPerSecond mean) {
    Beaufort found = CALM;
    for (Beaufort force : values()) {
      if (mean.value() >= force.lowestMetresPerSecond) {
        found = force;
      }
    }
    return found;
  }

  /**
   * Returns the force of a number.
   *
   * @param number 0 to 12
   */
  public static Beaufort ofNumber(int number) {
    Bounds.requireBetween("Wind force", number, "", 0, 12);
    Beaufort found = CALM;
    for (Beaufort force : values()) {
      if (force.number == number) {
        found = force;
      }
    }
    return found;
  }

  /** Returns the number, 0 to 12. */
  public int number() {
    return number;
  }

  /** Returns the mean speed at which the force begins. */
  public MetresPerSecond lowest() {
    return new MetresPerSecond(lowestMetresPerSecond);
  }

  /** Returns the speed in its middle by the smooth relation {@code v = 0.836 B^1.5}. */
  public MetresPerSecond typical() {
    return new MetresPerSecond(0.836 * number * Math.sqrt(number));
  }

  /** Returns its name: "fresh breeze". */
  public String tradeName() {
    return tradeName;
  }

  /** Returns what one sees on land. */
  public String signs() {
    return signs;
  }

  @Override
  public String toString() {
    return "force " + number + ", " + tradeName;
  }
}
