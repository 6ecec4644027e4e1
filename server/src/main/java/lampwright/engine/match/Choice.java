package lampwright.engine.match;

/**
 * One way to serve a row: this head with that softbox at a quarter of its power.
 *
 * @param cost of the choice by itself, finite
 * @param waiting how long it makes everybody wait, 0 or more; only the longest of all rows counts
 * @param uses what it takes of the shared supplies
 */
public record Choice(double cost, double waiting, Uses uses) {

  /** Checks the bounds. */
  public Choice {
    if (!Double.isFinite(cost) || !(waiting >= 0 && waiting < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("A cost must be finite and a wait 0 or more.");
    }
  }
}
