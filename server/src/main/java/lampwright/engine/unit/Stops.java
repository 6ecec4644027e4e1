package lampwright.engine.unit;

import java.util.List;

/**
 * A number of stops: the base-two logarithm of a ratio of light. Plus is more light, minus is less;
 * a loss is written as a positive number where the name says loss or down.
 *
 * @param value stops, from -1000 to 1000 (far more than any light on earth spans; the bound keeps
 *     every factor a finite, positive double)
 */
public record Stops(double value) implements Comparable<Stops> {

  /** No difference. */
  public static final Stops ZERO = new Stops(0);

  /** Twice the light. */
  public static final Stops ONE = new Stops(1);

  /** A third of a stop, the step of most cameras. */
  public static final Stops THIRD = new Stops(1.0 / 3);

  /** A tenth of a stop, the step of most meters and heads. */
  public static final Stops TENTH = new Stops(0.1);

  /** Checks the bound. */
  public Stops {
    Bounds.requireBetween("Stops", value, "", -1000, 1000);
    value = value + 0.0; // no negative zero, which would print and compare oddly
  }

  /** Returns so many stops. */
  public static Stops of(double value) {
    return new Stops(value);
  }

  /**
   * Returns the stops of a ratio of light, {@code log2(ratio)}.
   *
   * @param ratio above 0
   */
  public static Stops ofRatio(double ratio) {
    return new Stops(BaseTwo.log(ratio));
  }

  /**
   * Returns the stops of several lights together, each given in stops from the same level: {@code
   * log2 of the sum of 2^s}. Two equal lights make one stop more.
   *
   * @param lights at least one
   */
  public static Stops sumOfLight(List<Stops> lights) {
    if (lights.isEmpty()) {
      throw new IllegalArgumentException("Lights (0) must be at least 1.");
    }
    // Sum relative to the strongest, so that nothing overflows and a single light stays exact.
    double strongest = lights.get(0).value;
    for (Stops light : lights) {
      strongest = Math.max(strongest, light.value);
    }
    double sum = 0;
    for (Stops light : lights) {
      sum += BaseTwo.power(light.value - strongest);
    }
    return new Stops(strongest + BaseTwo.log(sum));
  }

  /**
   * Returns independent errors put together: the root of the sum of squares, never negative.
   *
   * @param errors each in stops, sign ignored
   */
  public static Stops inQuadrature(List<Stops> errors) {
    double sum = 0;
    for (Stops error : errors) {
      sum += error.value * error.value;
    }
    return new Stops(Math.sqrt(sum));
  }

  /** Returns the ratio of light, {@code 2^v}; always finite and above 0. */
  public double toFactor() {
    return BaseTwo.power(value);
  }

  /** Returns the change of light in percent: +1 stop is +100, -1 stop is -50. */
  public double toPercent() {
    return (toFactor() - 1) * 100;
  }

  /** Returns these and more stops, one light changed twice. For two lights see sumOfLight. */
  public Stops plus(Stops other) {
    return new Stops(value + other.value);
  }

  /** Returns the difference from the other. */
  public Stops minus(Stops other) {
    return new Stops(value - other.value);
  }

  /** Returns the opposite change. */
  public Stops negated() {
    return new Stops(-value);
  }

  /** Returns the size without the sign. */
  public Stops abs() {
    return new Stops(Math.abs(value));
  }

  /** Returns the number of times the change. */
  public Stops times(double factor) {
    return new Stops(value * factor);
  }

  /** Asks whether this lies no further than the tolerance from the other. */
  public boolean isWithin(Stops tolerance, Stops other) {
    return Math.abs(value - other.value) <= tolerance.value;
  }

  @Override
  public int compareTo(Stops other) {
    return Double.compare(value, other.value);
  }

  /** Signed, one decimal, as deviations are shown: "+0.3 stop", "-2.0 stops". */
  public String toSignedText() {
    String size = Bounds.fixed(Math.abs(value), 1);
    String sign = size.equals("0.0") ? "±" : value < 0 ? "−" : "+";
    return sign + size + (Math.abs(value) <= 1 ? " stop" : " stops");
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + (Math.abs(value) == 1 ? " stop" : " stops");
  }
}
