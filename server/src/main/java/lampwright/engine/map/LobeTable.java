package lampwright.engine.map;

import lampwright.engine.beam.Lobe;

/**
 * A lobe by its cosine, from equally spaced values and cubics through four of them. Relative error
 * below 1e-5 wherever the lobe gives more than a millionth of its peak, for exponents up to 200;
 * beyond that, and close to a right angle, the lobe itself is asked.
 */
final class LobeTable {

  private static final int STEPS = 2048;
  private static final double EXACT_BELOW = 8.0 / STEPS;
  private static final double STEEPEST = 200;

  private final double[] values = new double[STEPS + 3];
  private Lobe lobe = new Lobe(1);
  private boolean filled;

  /** Takes another lobe; the room is used again. */
  void take(Lobe other) {
    if (filled && other.equals(lobe)) {
      return;
    }
    lobe = other;
    filled = true;
    for (int i = 0; i < values.length; i++) {
      // One beyond each end, where the power goes on smoothly.
      double cosine = (i - 1.0) / STEPS;
      values[i] = cosine <= 0 ? 0 : StrictMath.exp(other.exponent() * StrictMath.log(cosine));
    }
  }

  /** Returns the lobe's relative intensity for a cosine above 0. */
  double at(double cosine) {
    if (cosine < EXACT_BELOW || lobe.exponent() > STEEPEST) {
      return lobe.relativeAt(cosine, 0);
    }
    double place = Math.min(1, cosine) * STEPS;
    int step = Math.min(STEPS - 1, (int) place);
    double t = place - step;
    double a = values[step];
    double b = values[step + 1];
    double c = values[step + 2];
    double d = values[step + 3];
    double before = t + 1;
    double left = t - 1;
    double after = t - 2;
    // A cubic may dip below none by what doubles leave over.
    return Math.max(
        0,
        t * after * left * a * (-1.0 / 6)
            + before * left * after * b * 0.5
            - before * t * after * c * 0.5
            + before * t * left * d * (1.0 / 6));
  }
}
