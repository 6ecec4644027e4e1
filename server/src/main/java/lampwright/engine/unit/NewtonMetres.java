package lampwright.engine.unit;

/**
 * A moment: what tips a stand, and what keeps it up.
 *
 * @param value newton metres, 0 or more
 */
public record NewtonMetres(double value) implements Comparable<NewtonMetres> {

  /** Checks the bound. */
  public NewtonMetres {
    Bounds.requireZeroOrMore("Moment", value, "N·m");
  }

  /** Returns so many. */
  public static NewtonMetres of(double value) {
    return new NewtonMetres(value);
  }

  @Override
  public int compareTo(NewtonMetres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " N·m";
  }
}
