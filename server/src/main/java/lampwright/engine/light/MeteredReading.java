package lampwright.engine.light;

import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What an incident meter, pointed at one head from its axis, read. A meter's gate takes in ambient
 * light too (source iso-10157): take the reading in the dark, or subtract {@code E t} first.
 *
 * @param fNumber the reading
 * @param iso the speed set on the meter
 * @param distance from the face of the source, above 0
 * @param stopsDown the head's setting below full power
 * @param constant the meter's constant
 */
public record MeteredReading(
    FNumber fNumber, Iso iso, Metres distance, Stops stopsDown, MeterConstant constant) {

  /** Checks the distance. */
  public MeteredReading {
    Bounds.requirePositive("Distance", distance.value(), "m");
  }

  /** Returns a reading at full power with a flat receptor. */
  public static MeteredReading atFullPower(FNumber fNumber, Iso iso, Metres distance) {
    return new MeteredReading(fNumber, iso, distance, Stops.ZERO, MeterConstant.FLAT);
  }

  /** Returns the exposure at the metered distance, were the head at full power. */
  public LuxSeconds toFullPower() {
    return fNumber.toExposure(iso, constant).plus(stopsDown);
  }

  /**
   * Returns the exposure at another distance, were the head at full power: the reading rescaled by
   * the face's real fall-off.
   */
  public LuxSeconds fullPowerAt(Metres other, EmittingFace face) {
    return toFullPower().times(face.geometry(other) / face.geometry(distance));
  }

  /**
   * Returns what the meter would read at another distance, power and speed: {@code N = N0
   * sqrt(G(d)/G(d0)) 2^((s0-s)/2) sqrt(S/S0)}.
   */
  public FNumber rescaled(Metres other, EmittingFace face, Stops otherStopsDown, Iso otherIso) {
    return FNumber.ofExposure(fullPowerAt(other, face).minus(otherStopsDown), otherIso, constant);
  }

  @Override
  public String toString() {
    return fNumber
        + " at "
        + distance
        + ", "
        + iso
        + (stopsDown.value() == 0 ? ", full power" : ", " + stopsDown + " down");
  }
}
