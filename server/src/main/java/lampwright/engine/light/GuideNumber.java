package lampwright.engine.light;

import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * A guide number: f-number times distance at ISO 100 and full power. Makers' numbers are often for
 * a light-walled room and half a stop or more optimistic (source guide-number); a metered reading
 * is better.
 *
 * @param metresAtIso100 in metres at ISO 100, above 0; goes with the root of speed and of power
 */
public record GuideNumber(double metresAtIso100) {

  /** Checks the bound. */
  public GuideNumber {
    Bounds.requirePositive("Guide number", metresAtIso100, "m");
  }

  /** Returns a guide number in metres at ISO 100. */
  public static GuideNumber of(double metresAtIso100) {
    return new GuideNumber(metresAtIso100);
  }

  /** Returns a guide number stated in metres at another speed. */
  public static GuideNumber ofMetresAt(double metres, Iso iso) {
    return new GuideNumber(metres / Math.sqrt(iso.value() / 100));
  }

  /** Returns a guide number stated in feet at ISO 100. */
  public static GuideNumber ofFeet(double feetAtIso100) {
    return new GuideNumber(feetAtIso100 * Metres.PER_FOOT);
  }

  /** Returns the guide number of an integrated intensity, {@code sqrt(100 Q / C)}. */
  public static GuideNumber ofCandelaSeconds(CandelaSeconds intensity, MeterConstant constant) {
    return new GuideNumber(Math.sqrt(100 * intensity.value() / constant.luxSeconds()));
  }

  /**
   * Returns the guide number of a reading far enough from the source for the inverse square law:
   * {@code N d / sqrt(S/100 2^-s)}.
   */
  public static GuideNumber ofReading(FNumber reading, Metres distance, Iso iso, Stops stopsDown) {
    return new GuideNumber(
        reading.value()
            * distance.value()
            / Math.sqrt(iso.value() / 100 * stopsDown.negated().toFactor()));
  }

  /** Returns the integrated intensity behind it, {@code Q = C GN^2 / 100}. */
  public CandelaSeconds toCandelaSeconds(MeterConstant constant) {
    return new CandelaSeconds(constant.luxSeconds() * metresAtIso100 * metresAtIso100 / 100);
  }

  /** Returns the number in feet at ISO 100. */
  public double toFeet() {
    return metresAtIso100 / Metres.PER_FOOT;
  }

  /** Returns the number in metres at another speed. */
  public double toMetresAt(Iso iso) {
    return metresAtIso100 * Math.sqrt(iso.value() / 100);
  }

  /** Returns the exposure at a distance at full power by the inverse square law. */
  public LuxSeconds exposureAt(Metres distance, MeterConstant constant) {
    return toCandelaSeconds(constant).at(distance);
  }

  /** Returns the f-number at a distance, a speed and a power. */
  public FNumber fNumberAt(Metres distance, Iso iso, Stops stopsDown) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    return new FNumber(toMetresAt(iso) / distance.value()).closedBy(stopsDown.negated());
  }

  /** Returns the distance that gives an f-number at a speed and a power. */
  public Metres distanceFor(FNumber fNumber, Iso iso, Stops stopsDown) {
    return new Metres(fNumberAt(new Metres(1), iso, stopsDown).value() / fNumber.value());
  }

  @Override
  public String toString() {
    return "guide number " + Bounds.rounded(metresAtIso100, 1) + " m at ISO 100";
  }
}
