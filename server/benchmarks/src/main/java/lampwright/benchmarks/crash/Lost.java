package lampwright.benchmarks.crash;

/** An invariant does not hold. */
final class Lost extends RuntimeException {

  private static final long serialVersionUID = 1;

  Lost(String invariant, String what) {
    super(invariant + ": " + what);
  }
}
