package lampwright.engine.sun;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/**
 * A place on earth.
 *
 * @param latitude -90 to 90, north positive
 * @param longitude -180 to 180, east positive
 * @param height above the sea; it moves the sun by less than 0.00001 degree a kilometre
 */
public record PlaceOnEarth(Degrees latitude, Degrees longitude, Metres height) {

  /** Checks the bounds. */
  public PlaceOnEarth {
    Bounds.requireBetween("Latitude", latitude.value(), "°", -90, 90);
    Bounds.requireBetween("Longitude", longitude.value(), "°", -180, 180);
  }

  /** Returns a place at the height of the sea. */
  public static PlaceOnEarth of(Degrees latitude, Degrees longitude) {
    return new PlaceOnEarth(latitude, longitude, new Metres(0));
  }
}
