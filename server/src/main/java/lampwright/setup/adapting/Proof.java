package lampwright.setup.adapting;

/**
 * How sure it is that nothing better exists.
 *
 * @param atLeast what no adaptation can cost less than, in the units of {@link Weights}
 * @param gap by how much the best that was found may be above that; 0 where it is proved the best
 * @param unlooked whether kit and setup had more combinations than are looked at, so that the proof
 *     is for the likelier ones only
 */
public record Proof(double atLeast, double gap, boolean unlooked) {

  /** Asks whether the answer is proved to be the best there is. */
  public boolean isOptimal() {
    return gap <= 0 && !unlooked;
  }
}
