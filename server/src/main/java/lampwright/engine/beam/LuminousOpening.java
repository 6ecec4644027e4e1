package lampwright.engine.beam;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;

/**
 * The size of what shines, as a photometric file states it: all 0 for a point.
 *
 * @param width across the plane of horizontal angle 0, 0 or more
 * @param length along that plane, 0 or more; for a tabulated source this is its own up
 * @param height along the axis, 0 or more
 * @param round whether width and length are the axes of an ellipse
 */
public record LuminousOpening(Metres width, Metres length, Metres height, boolean round) {

  /** Checks the bounds. */
  public LuminousOpening {
    Bounds.requireZeroOrMore("Luminous width", width.value(), "m");
    Bounds.requireZeroOrMore("Luminous length", length.value(), "m");
    Bounds.requireZeroOrMore("Luminous height", height.value(), "m");
  }

  /** Asks whether it has no area towards the axis, so that it counts as a point. */
  public boolean isPoint() {
    return width.value() == 0 || length.value() == 0;
  }
}
