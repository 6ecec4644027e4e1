package lampwright.engine.exposure;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * An arithmetic film or sensor speed. Cameras' settings can differ from the saturation speed by
 * half a stop either way (source trade-practice).
 *
 * @param value the exact speed, above 0; behind the mark 640 it is 634.96
 */
public record Iso(double value) implements Comparable<Iso> {

  /** The speed that guide numbers and EV100 are stated for. */
  public static final Iso HUNDRED = new Iso(100);

  /** Checks the bound. */
  public Iso {
    Bounds.requirePositive("ISO", value, "");
  }

  /** Returns exactly this speed. */
  public static Iso of(double value) {
    return new Iso(value);
  }

  /** Returns the exact value behind a printed speed, or the number itself where it is no mark. */
  public static Iso ofMark(double printed) {
    return new Iso(
        MarkedScale.ISO_THIRD.findPrinted(printed).map(MarkedScale.Mark::exact).orElse(printed));
  }

  /**
   * Reads "400" or "ISO 400" and returns the exact value behind the mark.
   *
   * @throws IllegalArgumentException where the text is no number above 0
   */
  public static Iso parse(String text) {
    String trimmed = text.trim();
    boolean prefixed = trimmed.regionMatches(true, 0, "ISO", 0, 3);
    return ofMark(Fractions.parse(prefixed ? trimmed.substring(3) : trimmed));
  }

  /** Returns by how many stops this is more sensitive than the other. */
  public Stops stopsOver(Iso other) {
    return Stops.ofRatio(value / other.value);
  }

  /** Returns the speed that is so many stops more sensitive. */
  public Iso plus(Stops stops) {
    return new Iso(value * stops.toFactor());
  }

  /** Returns the exact value of the nearest mark, in stops; of two the lower. */
  public Iso nearestMark(MarkedScale scale) {
    return new Iso(scale.nearest(value).mark().exact());
  }

  /** Returns the nearest mark as printed, such as "ISO 400". */
  public String markText(MarkedScale scale) {
    return "ISO " + scale.nearest(value).mark().text();
  }

  @Override
  public int compareTo(Iso other) {
    return Double.compare(value, other.value);
  }

  /** The mark where this is one, else the rounded speed: "ISO 640", "ISO 188". */
  @Override
  public String toString() {
    return "ISO "
        + MarkedScale.ISO_THIRD
            .findExact(value)
            .map(MarkedScale.Mark::text)
            .orElseGet(() -> Bounds.rounded(value, 0));
  }
}
