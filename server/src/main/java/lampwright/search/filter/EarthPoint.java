package lampwright.search.filter;

/**
 * A point on earth.
 *
 * @param latitudeDeg -90 to 90, north is positive
 * @param longitudeDeg -180 to 180, east is positive
 */
public record EarthPoint(double latitudeDeg, double longitudeDeg) {

  public EarthPoint {
    if (!(Math.abs(latitudeDeg) <= 90)) {
      throw new IllegalArgumentException("Latitude (" + latitudeDeg + "°) must be -90 to 90.");
    }
    if (!(Math.abs(longitudeDeg) <= 180)) {
      throw new IllegalArgumentException("Longitude (" + longitudeDeg + "°) must be -180 to 180.");
    }
    latitudeDeg = rounded(latitudeDeg);
    longitudeDeg = rounded(longitudeDeg);
  }

  /** To a centimetre. Adding zero makes the negative zero a plain one. */
  private static double rounded(double degrees) {
    return Math.round(degrees * 1e7) / 1e7 + 0.0;
  }
}
