package lampwright.engine.unit;

/**
 * A correlated colour temperature. Never add kelvins; add {@link Mired}.
 *
 * @param value kelvins, above 0
 */
public record Kelvin(double value) implements Comparable<Kelvin> {

  /** Checks the bound. */
  public Kelvin {
    Bounds.requirePositive("Colour temperature", value, "K");
  }

  /** Returns so many. */
  public static Kelvin of(double value) {
    return new Kelvin(value);
  }

  /** Returns the reciprocal, {@code M = 10^6 / T}, in which filters add. */
  public Mired toMired() {
    return new Mired(1e6 / value);
  }

  /** Returns the filter shift that would turn this light into the other; plus is warmer. */
  public Mired shiftTo(Kelvin other) {
    return other.toMired().minus(toMired());
  }

  /**
   * Returns how a light of this temperature looks in a picture: {@code 10^6 / (M - M_wb + M_n)}.
   *
   * @param whiteBalance what the camera is set to
   * @param neutral the temperature that is taken as neutral, often 5500 K
   * @throws IllegalArgumentException where the light would look bluer than any temperature
   */
  public Kelvin apparentAt(Kelvin whiteBalance, Kelvin neutral) {
    return toMired().minus(whiteBalance.toMired()).plus(neutral.toMired()).toKelvin();
  }

  @Override
  public int compareTo(Kelvin other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " K";
  }
}
