package lampwright.engine.light;

import lampwright.engine.beam.Spread;

/**
 * A point with a spread: the relative intensity over the distance squared, times what the receiver
 * takes of that direction. Exact.
 */
public record PointField(Spread spread) implements LightField {

  @Override
  public double flat(double x, double y, double z, double nx, double ny, double nz) {
    return weighed(x, y, z, nx, ny, nz, false);
  }

  @Override
  public double dome(double x, double y, double z, double nx, double ny, double nz) {
    return weighed(x, y, z, nx, ny, nz, true);
  }

  private double weighed(
      double x, double y, double z, double nx, double ny, double nz, boolean dome) {
    double distance = Math.sqrt(x * x + y * y + z * z);
    if (distance < NEAREST_M) {
      return relative(0, 0, 1) * weight(-nz, dome) / (NEAREST_M * NEAREST_M);
    }
    double taken = weight(-(nx * x + ny * y + nz * z) / distance, dome);
    return taken == 0 ? 0 : relative(x, y, z / distance) * taken / (distance * distance);
  }

  private double relative(double x, double y, double cosine) {
    double around = spread.isRound() ? 0 : StrictMath.atan2(x, y);
    return spread.relativeAt(Math.max(-1, Math.min(1, cosine)), around);
  }

  private static double weight(double cosine, boolean dome) {
    return Math.max(0, dome ? (1 + cosine) / 2 : cosine);
  }
}
