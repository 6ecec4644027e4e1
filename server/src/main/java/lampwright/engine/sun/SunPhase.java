package lampwright.engine.sun;

import lampwright.engine.unit.Degrees;

/**
 * What the light of the day is called, by the sun's geometric elevation. Sunset at -0.833 degrees
 * (source reda-andreas), -6, -12 and -18 as observatories define twilight (source
 * twilight-definitions). Golden hour from 6 to -4 and blue hour to -6 degrees are common practice
 * and vary, so pages show the angle beside the name (source trade-practice). A boundary belongs to
 * the brighter side.
 */
public enum SunPhase {
  DAY("day", 6),
  GOLDEN_SUN_UP("golden hour, sun up", SunPhase.SUNSET_DEG),
  GOLDEN_SUN_DOWN("golden hour, sun down", -4),
  BLUE_HOUR("blue hour", -6),
  NAUTICAL_TWILIGHT("nautical twilight", -12),
  ASTRONOMICAL_TWILIGHT("astronomical twilight", -18),
  NIGHT("night", -90);

  /** Upper limb on the horizon: 0.5667 of refraction and 0.2667 of radius below, rounded. */
  private static final double SUNSET_DEG = -0.833;

  private final String tradeName;
  private final double lowestDeg;

  SunPhase(String tradeName, double lowestDeg) {
    this.tradeName = tradeName;
    this.lowestDeg = lowestDeg;
  }

  /** Returns the name as photographers say it. */
  public String tradeName() {
    return tradeName;
  }

  /** Returns the lowest geometric elevation that still has this name. */
  public Degrees lowest() {
    return new Degrees(lowestDeg);
  }

  /** Returns the phase of a geometric elevation, -90 to 90. */
  public static SunPhase of(Degrees geometricElevation) {
    for (SunPhase phase : values()) {
      if (geometricElevation.value() >= phase.lowestDeg) {
        return phase;
      }
    }
    return NIGHT;
  }
}
