package lampwright.engine.colour;

import lampwright.engine.unit.Bounds;

/**
 * A colour in a space of even hues (source oklab).
 *
 * @param lightness 0 for black, 1 for white
 * @param a green to red
 * @param b blue to yellow
 */
public record Oklab(double lightness, double a, double b) {

  /** Refuses numbers that are not finite. */
  public Oklab {
    Bounds.requireFinite("Lightness", lightness, "");
    Bounds.requireFinite("a", a, "");
    Bounds.requireFinite("b", b, "");
  }

  /** Returns how far it is from grey. */
  public double chroma() {
    return Math.sqrt(a * a + b * b);
  }
}
