package lampwright.engine.beam;

import lampwright.engine.unit.Degrees;

/**
 * A lobe by its cosine, from equally spaced values and cubics through four of them: for whoever
 * asks thousands of times. Relative error below 1e-5 wherever the lobe gives more than a millionth
 * of its peak, for exponents up to 200; beyond that, and close to a right angle, the lobe itself is
 * asked.
 */
public final class TabledLobe implements Spread {

  private static final int STEPS = 2048;
  private static final double EXACT_BELOW = 8.0 / STEPS;
  private static final double STEEPEST = 200;

  private final Lobe lobe;
  private final double exactBelow;
  private final double[] values = new double[STEPS + 3];

  TabledLobe(Lobe lobe) {
    this.lobe = lobe;
    exactBelow = lobe.exponent() > STEEPEST ? Double.POSITIVE_INFINITY : EXACT_BELOW;
    if (lobe.exponent() <= STEEPEST) {
      for (int i = 0; i < values.length; i++) {
        // One beyond each end, where the power goes on smoothly.
        double cosine = (i - 1.0) / STEPS;
        values[i] = cosine <= 0 ? 0 : StrictMath.exp(lobe.exponent() * StrictMath.log(cosine));
      }
    }
  }

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    if (cosine < exactBelow) {
      return lobe.relativeAt(cosine, aroundRadians);
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

  @Override
  public double relativeToward(double x, double y, double z, double length) {
    return relativeAt(z / length, 0);
  }

  @Override
  public boolean isRound() {
    return true;
  }

  @Override
  public double solidAngleSr() {
    return lobe.solidAngleSr();
  }

  @Override
  public Degrees reach() {
    return lobe.reach();
  }

  @Override
  public Spread tabled() {
    return this;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TabledLobe tabled && lobe.equals(tabled.lobe);
  }

  @Override
  public int hashCode() {
    return lobe.hashCode();
  }

  @Override
  public String toString() {
    return lobe + " by a table";
  }
}
