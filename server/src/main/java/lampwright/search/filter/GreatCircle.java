package lampwright.search.filter;

/**
 * Distances on a sphere, by the haversine formula (R. W. Sinnott, Virtues of the haversine, Sky and
 * Telescope 68, 1984), with the mean earth radius of IUGG (6,371.0088 km). Against the WGS 84
 * ellipsoid it errs by up to 0.56 %.
 */
public final class GreatCircle {

  private static final double RADIUS_KM = 6_371.0087714;

  private GreatCircle() {}

  /** How far two points are apart, in kilometres. */
  public static double km(EarthPoint from, EarthPoint to) {
    double latitude1 = Math.toRadians(from.latitudeDeg());
    double latitude2 = Math.toRadians(to.latitudeDeg());
    double h1 = StrictMath.sin((latitude2 - latitude1) / 2);
    double h2 = StrictMath.sin(Math.toRadians(to.longitudeDeg() - from.longitudeDeg()) / 2);
    double inner = h2 * h2 * StrictMath.cos(latitude1) * StrictMath.cos(latitude2);
    double h = Math.min(1, h1 * h1 + inner);
    return 2 * RADIUS_KM * StrictMath.asin(Math.sqrt(h));
  }
}
