package lampwright.engine.unit;

/**
 * A force.
 *
 * @param value newtons, 0 or more
 */
public record Newtons(double value) implements Comparable<Newtons> {

  /** Checks the bound. */
  public Newtons {
    Bounds.requireZeroOrMore("Force", value, "N");
  }

  /** Returns so many. */
  public static Newtons of(double value) {
    return new Newtons(value);
  }

  /** Returns the moment of the force on such an arm, {@code F h}. */
  public NewtonMetres onArm(Metres arm) {
    return new NewtonMetres(value * arm.value());
  }

  @Override
  public int compareTo(Newtons other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return Bounds.rounded(value, 4) + " N";
  }
}
