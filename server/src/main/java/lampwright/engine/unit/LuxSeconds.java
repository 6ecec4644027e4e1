package lampwright.engine.unit;

import java.util.List;

/**
 * Luminous exposure: illuminance summed over time. What every light is kept in, because it adds and
 * is free of aperture and film speed.
 *
 * @param value lux seconds, 0 or more
 */
public record LuxSeconds(double value) implements Comparable<LuxSeconds> {

  /** No light. */
  public static final LuxSeconds NONE = new LuxSeconds(0);

  /** Checks the bound. */
  public LuxSeconds {
    Bounds.requireZeroOrMore("Exposure", value, "lx·s");
  }

  /** Returns so many. */
  public static LuxSeconds of(double value) {
    return new LuxSeconds(value);
  }

  /** Returns the sum of all, none where the list is empty. */
  public static LuxSeconds sum(List<LuxSeconds> exposures) {
    double sum = 0;
    for (LuxSeconds exposure : exposures) {
      sum += exposure.value;
    }
    return new LuxSeconds(sum);
  }

  /** Returns both together. */
  public LuxSeconds plus(LuxSeconds other) {
    return new LuxSeconds(value + other.value);
  }

  /** Returns the exposure changed by so many stops; minus stops are less light. */
  public LuxSeconds plus(Stops change) {
    return new LuxSeconds(value * change.toFactor());
  }

  /** Returns the exposure less a loss; plus stops are less light. */
  public LuxSeconds minus(Stops loss) {
    return plus(loss.negated());
  }

  /**
   * Returns the exposure times a factor, such as the cosine of the receiver.
   *
   * @param factor 0 or more
   */
  public LuxSeconds times(double factor) {
    return new LuxSeconds(value * factor);
  }

  /**
   * Returns by how many stops this exceeds the other.
   *
   * @throws IllegalArgumentException where either is no light at all: no ratio exists
   */
  public Stops stopsOver(LuxSeconds other) {
    Bounds.requirePositive("Exposure", value, "lx·s");
    Bounds.requirePositive("Exposure compared with", other.value, "lx·s");
    return Stops.ofRatio(value / other.value);
  }

  @Override
  public int compareTo(LuxSeconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " lx·s";
  }
}
