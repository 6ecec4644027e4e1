package lampwright.engine.light;

import lampwright.engine.beam.Spread;

/**
 * A point with a spread: the relative intensity over the distance squared, times what the receiver
 * takes of that direction. Exact.
 */
public record PointField(Spread spread) implements LightField {

  @Override
  public LightField tabled() {
    return new PointField(spread.tabled());
  }

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
      return spread.relativeAt(1, 0) * weight(-nz, dome) / (NEAREST_M * NEAREST_M);
    }
    double taken = weight(-(nx * x + ny * y + nz * z) / distance, dome);
    return taken == 0
        ? 0
        : spread.relativeToward(x, y, z, distance) * taken / (distance * distance);
  }

  private static double weight(double cosine, boolean dome) {
    return Math.max(0, dome ? (1 + cosine) / 2 : cosine);
  }
}
