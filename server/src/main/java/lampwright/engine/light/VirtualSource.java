package lampwright.engine.light;

import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;

/**
 * A source with projecting optics (deep reflector, lens), as a point some way behind its lip:
 * {@code N ~ 1 / (d + o)}. Fitted to two readings (source derived).
 *
 * @param offset how far the point lies behind the lip, o, 0 or more
 */
public record VirtualSource(Metres offset) {

  /**
   * Returns the point that two readings on one axis, at one power and speed, speak for: {@code o =
   * (d2 - r d1) / (r - 1)} with {@code r = N1/N2}.
   *
   * @throws IllegalArgumentException where the second distance is not greater, the second reading
   *     not weaker, or the light falls faster than inverse square: then the beam crosses in front
   *     of the head, or a reading is wrong
   */
  public static VirtualSource ofReadings(
      FNumber first, Metres firstDistance, FNumber second, Metres secondDistance) {
    double d1 = firstDistance.value();
    double d2 = secondDistance.value();
    Bounds.requirePositive("First distance", d1, "m");
    if (d2 <= d1) {
      throw new IllegalArgumentException(
          Bounds.subject("Second distance", d2, "m")
              + " must be more than the first ("
              + Bounds.plain(d1)
              + " m).");
    }
    double r = first.value() / second.value();
    // A hair of rounding is allowed, so that exact inverse-square readings give 0.
    if (r <= 1 || r > d2 / d1 * (1 + 1e-12)) {
      throw new IllegalArgumentException(
          Bounds.subject("Ratio of the readings", r, "")
              + " must be more than 1 and at most "
              + Bounds.rounded(d2 / d1, 4)
              + ", the ratio of the distances. Maybe meter again?");
    }
    return new VirtualSource(new Metres(Math.max(0, (d2 - r * d1) / (r - 1))));
  }

  /** Returns the reading at a distance from a reading at another. */
  public FNumber reading(FNumber known, Metres knownDistance, Metres distance) {
    return new FNumber(
        known.value()
            * (knownDistance.value() + offset.value())
            / (distance.value() + offset.value()));
  }
}
