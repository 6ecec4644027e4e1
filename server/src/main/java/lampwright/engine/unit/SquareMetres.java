package lampwright.engine.unit;

/**
 * An area, such as the face that a softbox turns to the wind.
 *
 * @param value square metres, 0 or more
 */
public record SquareMetres(double value) implements Comparable<SquareMetres> {

  /** Checks the bound. */
  public SquareMetres {
    Bounds.requireZeroOrMore("Area", value, "m²");
  }

  /** Returns so many. */
  public static SquareMetres of(double value) {
    return new SquareMetres(value);
  }

  @Override
  public int compareTo(SquareMetres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " m²";
  }
}
