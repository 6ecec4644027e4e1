package lampwright.search.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Against the ellipsoid WGS 84 (NGA.STND.0036: a = 6,378,137 m, 1/f = 298.257223563), on lines
 * whose length follows from its two numbers in closed form.
 */
class GreatCircleTest {

  private static final double A_KM = 6_378.137;
  private static final double FLATTENING = 1 / 298.257223563;
  private static final double E2 = FLATTENING * (2 - FLATTENING);

  private static double km(double lat1, double lon1, double lat2, double lon2) {
    return GreatCircle.km(new EarthPoint(lat1, lon1), new EarthPoint(lat2, lon2));
  }

  private static void isWithin(double share, double outside, double ours) {
    assertEquals(outside, ours, outside * share);
  }

  @Test
  void aDegreeAlongTheEquatorIsThatOfWgs84WithinTheStatedShare() {
    isWithin(0.0056, Math.toRadians(1) * A_KM, km(0, 12, 0, 13));
    // Across the antimeridian it is as long.
    assertEquals(km(0, 12, 0, 13), km(0, 179.5, 0, -179.5), 1e-9);
  }

  @Test
  void aDegreeOfLatitudeIsThatOfWgs84WithinTheStatedShareWhereItDiffersMost() {
    // The meridian's radius of curvature at the equator and at the pole.
    isWithin(0.0057, Math.toRadians(1) * A_KM * (1 - E2), km(-0.5, 7, 0.5, 7));
    isWithin(0.0057, Math.toRadians(1) * A_KM / Math.sqrt(1 - E2), km(89.5, 7, 89.5, -173));
  }

  @Test
  void theQuarterMeridianIsThatOfWgs84() {
    // 10,001.965729 km: J. P. Snyder, Map Projections, a Working Manual, USGS 1395, with WGS 84.
    isWithin(0.0006, 10_001.965729, km(0, 0, 90, 77));
    assertEquals(2 * km(0, 0, 90, 0), km(0, 0, 0, 180), 1e-6);
  }
}
