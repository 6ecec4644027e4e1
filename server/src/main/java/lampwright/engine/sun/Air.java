package lampwright.engine.sun;

import lampwright.engine.unit.Bounds;

/**
 * The air at a place, which lifts the sun a little: by half a degree at the horizon. Weather
 * changes that by a tenth or so, near the horizon sometimes far more.
 *
 * @param pressureHpa hectopascals, above 0 up to 2000; the yearly mean of the place will do
 * @param temperatureC degrees Celsius, -90 to 70; likewise
 */
public record Air(double pressureHpa, double temperatureC) {

  /** The standard atmosphere at the sea (ISO 2533): 1013.25 hPa and 15 °C. */
  public static final Air STANDARD = new Air(1013.25, 15);

  /** Checks the bounds. */
  public Air {
    Bounds.requirePositive("Pressure", pressureHpa, "hPa");
    Bounds.requireBetween("Pressure", pressureHpa, "hPa", 0, 2000);
    Bounds.requireBetween("Temperature", temperatureC, "°C", -90, 70);
  }
}
