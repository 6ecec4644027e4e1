package lampwright.engine.beam;

import lampwright.engine.unit.Degrees;

/**
 * An evenly bright flat face (Lambertian): intensity falls with the cosine, none behind. A softbox
 * without a grid, an umbrella's fabric, a lit wall.
 */
public record Even() implements Spread {

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    return Math.max(0, cosine);
  }

  @Override
  public Degrees reach() {
    return new Degrees(90);
  }

  @Override
  public boolean isRound() {
    return true;
  }

  /** Returns pi. */
  @Override
  public double solidAngleSr() {
    return Math.PI;
  }
}
