package lampwright.engine.beam;

import lampwright.engine.unit.Degrees;

/**
 * A spread with something before it that cuts directions off. The intensity on the axis stays what
 * it was: a grid or a snoot absorbs, it does not gather.
 */
public final class CutSpread implements Spread {

  /** Enough for a relative error of the flux below 1e-3, for beams of any width. */
  private static final int RINGS = 160;

  private static final int SECTORS_OF_A_CIRCLE = 96;

  private final Spread beam;
  private final Opening opening;
  private final double solidAngleSr;

  private CutSpread(Spread beam, Opening opening, double solidAngleSr) {
    this.beam = beam;
    this.opening = opening;
    this.solidAngleSr = solidAngleSr;
  }

  /** Returns a beam behind an opening; integrates it once. */
  public static CutSpread of(Spread beam, Opening opening) {
    return new CutSpread(beam, opening, integral(beam, opening));
  }

  /** Returns the spread without the opening. */
  public Spread beam() {
    return beam;
  }

  /** Returns what cuts it. */
  public Opening opening() {
    return opening;
  }

  /** Returns the share of the beam's flux that passes, 0 to 1; the rest warms the opening. */
  public double passedShare() {
    return solidAngleSr / beam.solidAngleSr();
  }

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    double passed = opening.passedAt(cosine, aroundRadians);
    return passed == 0 ? 0 : passed * beam.relativeAt(cosine, aroundRadians);
  }

  @Override
  public double relativeToward(double x, double y, double z, double length) {
    double passed = opening.passedToward(x, y, z, length);
    return passed == 0 ? 0 : passed * beam.relativeToward(x, y, z, length);
  }

  @Override
  public Degrees reach() {
    double within = Math.min(opening.widest().value(), beam.reach().value());
    return new Degrees(within);
  }

  @Override
  public Spread tabled() {
    return new CutSpread(beam.tabled(), opening, solidAngleSr);
  }

  @Override
  public boolean isRound() {
    return beam.isRound() && opening.isRound();
  }

  /** Returns the integral found by the midpoint rule in angle, within 1e-3 of its value. */
  @Override
  public double solidAngleSr() {
    return solidAngleSr;
  }

  private static double integral(Spread beam, Opening opening) {
    double width = Math.min(opening.widest().toRadians(), beam.reach().toRadians()) / RINGS;
    double sum = 0;
    for (int ring = 0; ring < RINGS; ring++) {
      double angle = (ring + 0.5) * width;
      sum += ringMean(beam, opening, StrictMath.cos(angle)) * StrictMath.sin(angle);
    }
    return 2 * Math.PI * width * sum;
  }

  private static double ringMean(Spread beam, Opening opening, double cosine) {
    if (opening.isRound() && beam.isRound()) {
      return opening.passedAt(cosine, 0) * beam.relativeAt(cosine, 0);
    }
    // A round beam behind a square grid repeats every quarter turn.
    int sectors = beam.isRound() ? SECTORS_OF_A_CIRCLE / 4 : SECTORS_OF_A_CIRCLE;
    double step = 2 * Math.PI / SECTORS_OF_A_CIRCLE;
    double sum = 0;
    for (int sector = 0; sector < sectors; sector++) {
      double around = (sector + 0.5) * step;
      double share = beam.isRound() ? 1 : beam.relativeAt(cosine, around);
      sum += opening.passedAt(cosine, around) * share;
    }
    return sum / sectors * (beam.isRound() ? beam.relativeAt(cosine, 0) : 1);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CutSpread cut && beam.equals(cut.beam) && opening.equals(cut.opening);
  }

  @Override
  public int hashCode() {
    return 31 * beam.hashCode() + opening.hashCode();
  }

  @Override
  public String toString() {
    return beam + " behind " + opening;
  }
}
