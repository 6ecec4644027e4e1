package lampwright.engine.beam;

/** The same in every direction: a bare tube, to a first approximation. */
public record Omnidirectional() implements Spread {

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    return 1;
  }

  @Override
  public boolean isRound() {
    return true;
  }

  /** Returns the whole sphere, 4 pi. */
  @Override
  public double solidAngleSr() {
    return 4 * Math.PI;
  }
}
