package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;

/**
 * A colour filter on a light. Several on one light add, shifts and losses alike. Sheets of one name
 * differ between makers: use the sheet's own numbers.
 *
 * @param loss stops taken from the light, 0 or more
 * @param shift plus is warmer
 */
public record Gel(Stops loss, Mired shift) {

  /** No gel. */
  public static final Gel NONE = new Gel(Stops.ZERO, Mired.ZERO);

  /** Checks that a filter only takes light. */
  public Gel {
    Bounds.requireZeroOrMore("Gel loss", loss.value(), "stops");
  }

  /**
   * Returns a gel of a transmission, whose loss is {@code -log2 tau}.
   *
   * @param transmission above 0, up to 1
   */
  public static Gel ofTransmission(double transmission, Mired shift) {
    Bounds.requirePositive("Transmission", transmission, "");
    Bounds.requireBetween("Transmission", transmission, "", 0, 1);
    return new Gel(Stops.ofRatio(transmission).negated(), shift);
  }

  /** Returns both gels in one holder. */
  public Gel plus(Gel other) {
    return new Gel(loss.plus(other.loss), shift.plus(other.shift));
  }

  /**
   * Returns the colour of a light behind the gel, {@code 10^6 / (10^6/T + shift)}.
   *
   * @throws IllegalArgumentException where the light would be bluer than any temperature
   */
  public Kelvin toColour(Kelvin head) {
    return head.toMired().plus(shift).toKelvin();
  }
}
