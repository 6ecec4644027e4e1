package lampwright.engine.unit;

/**
 * Luminance: how bright a surface looks.
 *
 * @param value candelas per square metre, 0 or more
 */
public record CandelasPerSquareMetre(double value) implements Comparable<CandelasPerSquareMetre> {

  /** Checks the bound. */
  public CandelasPerSquareMetre {
    Bounds.requireZeroOrMore("Luminance", value, "cd/m²");
  }

  /** Returns so many. */
  public static CandelasPerSquareMetre of(double value) {
    return new CandelasPerSquareMetre(value);
  }

  @Override
  public int compareTo(CandelasPerSquareMetre other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " cd/m²";
  }
}
