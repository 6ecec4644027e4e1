package lampwright.engine;

import static java.util.Map.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lampwright.engine.sun.Air;
import lampwright.engine.sun.ClearSky;
import lampwright.engine.sun.JulianDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.sun.UsnoProgram;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import tools.jackson.databind.JsonNode;

/** How each check value on sun and sky is computed. */
final class SunChecks {

  private SunChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("sun.julian_day", in -> JulianDay.of(instant(in)).days()),
          entry("sun.zenith", in -> sun(in).zenith().value()),
          entry("sun.azimuth", in -> sun(in).azimuth().value()),
          entry("sun.elevation", in -> sun(in).elevation().value()),
          entry("sun.declination_topocentric", in -> observer(in).declination(instant(in)).value()),
          entry("sun.usno_program_lux", in -> program(in).light().value()),
          entry("sun.usno_program_azimuth", in -> program(in).wholeAzimuth().value()),
          entry(
              "sun.clear_sky_lux",
              in -> ClearSky.published(degrees(in, "geometric_altitude_deg")).horizontal().value()),
          entry(
              "sun.clear_sky_ev100",
              in ->
                  ClearSky.published(degrees(in, "geometric_altitude_deg"))
                      .ev100(in.constant())
                      .value()),
          entry(
              "sun.relative_azimuth",
              in ->
                  at(degrees(in, "sun_azimuth_deg"), new Degrees(0))
                      .relativeAzimuth(degrees(in, "camera_azimuth_deg"))
                      .value()),
          entry(
              "sun.angle_to_axis",
              in ->
                  at(degrees(in, "sun_azimuth_deg"), degrees(in, "sun_elevation_deg"))
                      .angleToAxis(
                          degrees(in, "camera_azimuth_deg"), degrees(in, "camera_elevation_deg"))
                      .value()),
          entry("sun.phase", in -> SunPhase.of(degrees(in, "elevation_deg")).tradeName()),
          entry(
              "sun.shadow_length_m",
              in ->
                  at(new Degrees(0), degrees(in, "elevation_deg"))
                      .shadow(in.metres("height_m"))
                      .orElseThrow()
                      .value()));

  private static Degrees degrees(CheckInputs in, String name) {
    return new Degrees(in.number(name));
  }

  private static SunPosition at(Degrees azimuth, Degrees elevation) {
    return new SunPosition(azimuth, elevation, elevation);
  }

  private static SunPosition sun(CheckInputs in) {
    return observer(in).position(instant(in));
  }

  private static PlaceOnEarth place(CheckInputs in) {
    return new PlaceOnEarth(
        degrees(in, "latitude_deg"),
        degrees(in, "longitude_east_deg"),
        new Metres(in.number("elevation_m", 0)));
  }

  private static Observer observer(CheckInputs in) {
    return new Observer(
        place(in),
        new Air(in.number("pressure_hpa"), in.number("temperature_c")),
        Optional.of(in.number("delta_t_s")));
  }

  private static UsnoProgram program(CheckInputs in) {
    return UsnoProgram.of(place(in), instant(in));
  }

  private static Instant instant(CheckInputs in) {
    LocalDate day =
        LocalDate.of((int) in.number("year"), (int) in.number("month"), (int) in.number("day"));
    double seconds = in.number("hour_utc") * 3600 + in.number("minute_utc", 0) * 60;
    return day.atStartOfDay(ZoneOffset.UTC).toInstant().plusMillis(Math.round(seconds * 1000));
  }

  /** The observer and the instant of a worked example. */
  static SunPosition sun(JsonNode inputs) {
    return sun(new CheckInputs(inputs));
  }

  static Observer observer(JsonNode inputs) {
    return observer(new CheckInputs(inputs));
  }

  static Instant instant(JsonNode inputs) {
    return instant(new CheckInputs(inputs));
  }
}
