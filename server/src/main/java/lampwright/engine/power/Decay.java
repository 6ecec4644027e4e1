package lampwright.engine.power;

/** The exponential decay that flash pulses are modelled by. */
final class Decay {

  /** Natural logarithm of 2. */
  static final double LN_2 = 0.6931471805599453;

  /** Natural logarithm of 10. */
  static final double LN_10 = 2.302585092994046;

  private Decay() {}

  /** Share of the energy within a time from the start, {@code 1 - e^(-t/tau)}, 0 to 1. */
  static double energyWithin(double seconds, double tau) {
    return 1 - StrictMath.exp(-seconds / tau);
  }
}
