package lampwright.engine.light;

import java.util.Optional;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/** How light changes with distance, and the distance that gives a wanted change. */
public final class FallOff {

  /** Halvings of the search interval; after 200 the bounds are neighbouring doubles. */
  private static final int HALVINGS = 200;

  private FallOff() {}

  /**
   * Returns the distance that gains so many stops by the inverse square law, {@code d 2^(-s/2)}; a
   * loss takes the light further away.
   *
   * @param from above 0
   */
  public static Metres inverseSquareDistance(Metres from, Stops gain) {
    Bounds.requirePositive("Distance", from.value(), "m");
    return new Metres(from.value() * gain.times(-0.5).toFactor());
  }

  /**
   * Returns the distance that gains so many stops on the real fall-off of a face on its axis,
   * solved to the last bit by bisection ({@link EmittingFace#geometry} only falls with distance).
   *
   * <p>A big source gains less than the inverse square law says when it moves in, and not without
   * bound: empty where even touching the subject would not do.
   *
   * @param from the present distance, above 0
   * @param gain plus for more light, minus for less
   */
  public static Optional<Metres> distanceForGain(EmittingFace face, Metres from, Stops gain) {
    if (face instanceof EmittingFace.PointSource) {
      return Optional.of(inverseSquareDistance(from, gain));
    }
    double wanted = face.geometry(from) * gain.toFactor();
    // The inverse square law never asks for a smaller step inwards, nor a smaller step outwards,
    // than a face needs; a tenth of a millimetre stands for touching.
    double near = 1e-4;
    double far = Math.max(from.value(), 1 / Math.sqrt(wanted)) * 2;
    if (face.geometry(new Metres(near)) < wanted) {
      return Optional.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = near + (far - near) / 2;
      if (face.geometry(new Metres(middle)) >= wanted) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return Optional.of(new Metres(near));
  }

  /**
   * Returns how fast a small light changes with distance, {@code 2 / (ln 2 d)} stops a metre, as a
   * size. Big sources are gentler.
   *
   * @param distance above 0
   */
  public static double gradientStopsPerMetre(Metres distance) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    return 2 / (StrictMath.log(2) * distance.value());
  }

  /** Returns by what share of its distance a small light must come nearer to gain so many stops. */
  public static double nearerShare(Stops gain) {
    return 1 - gain.times(-0.5).toFactor();
  }

  /**
   * Returns the bound of the error where a source's size is only guessed and the point law was
   * used, {@code log2(1 + (D / 2d)^2)}.
   *
   * @param guessedSize largest dimension D
   * @param distance d, above 0
   */
  public static Stops pointLawBound(Metres guessedSize, Metres distance) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    double ratio = guessedSize.value() / (2 * distance.value());
    return Stops.ofRatio(1 + ratio * ratio);
  }
}
