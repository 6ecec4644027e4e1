package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * How much brighter the lit side is than the shadow side when the fill comes from the camera. The
 * trade writes it in two ways, so the stops are kept and the way is named (trade-practice).
 *
 * @param keyOverFill the key less the fill, in stops
 */
public record LightingRatio(Stops keyOverFill) {

  /** Returns the ratio of a key and a fill that were measured each alone. */
  public static LightingRatio of(LuxSeconds key, LuxSeconds fill) {
    return new LightingRatio(key.stopsOver(fill));
  }

  /**
   * Returns the ratio behind "r:1", lit side to shadow side, {@code log2(r - 1)} stops.
   *
   * @param ratio above 1
   */
  public static LightingRatio ofLitToShadow(double ratio) {
    Bounds.requireFinite("Lighting ratio", ratio, ":1");
    if (ratio <= 1) {
      throw new IllegalArgumentException(
          Bounds.subject("Lighting ratio", ratio, ":1")
              + " must be more than 1. Maybe it is key to fill alone?");
    }
    return new LightingRatio(Stops.ofRatio(ratio - 1));
  }

  /** Returns (key+fill):fill, {@code 2^D + 1}: 0, 1, 2, 3 stops are 2, 3, 5, 9 to 1. */
  public double litToShadow() {
    return keyOverFill.toFactor() + 1;
  }

  /** Returns key:fill alone, {@code 2^D}. */
  public double keyToFill() {
    return keyOverFill.toFactor();
  }

  /** Returns the contrast between lit and shadow side, {@code log2(2^D + 1)}. */
  public Stops contrast() {
    return Stops.ofRatio(litToShadow());
  }

  /** Both ways, named: "3:1 lit to shadow, key 2:1 over fill". */
  @Override
  public String toString() {
    return Bounds.rounded(litToShadow(), 1)
        + ":1 lit to shadow, key "
        + Bounds.rounded(keyToFill(), 1)
        + ":1 over fill";
  }
}
