package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;

/** What the picture was shot with. Marks stand for their exact values: 1/125 is 1/128 s. */
public record ShootingExposure(
    FNumber fNumber,
    ShutterTime time,
    Iso iso,
    Stops neutralDensity,
    Optional<Kelvin> whiteBalance) {

  private static final Field<ShootingExposure, FNumber> F_NUMBER =
      required(
          "f_number", GearForms.fNumber(), ShootingExposure::fNumber, "The aperture, as printed.");
  private static final Field<ShootingExposure, ShutterTime> TIME =
      required(
          "time", GearForms.shutterTime(), ShootingExposure::time, "The shutter time: \"1/125\".");
  private static final Field<ShootingExposure, Iso> ISO =
      required("iso", GearForms.iso(), ShootingExposure::iso, "The ISO speed, as printed.");
  private static final Field<ShootingExposure, Stops> DENSITY =
      usually(
          new Stops(0),
          "neutral_density_stops",
          GearForms.stops(0, 20),
          ShootingExposure::neutralDensity,
          "Stops taken by grey filters on the lens; usually 0.");
  private static final Field<ShootingExposure, Optional<Kelvin>> WHITE_BALANCE =
      optional(
          "white_balance_k",
          SetupForms.whiteBalance(),
          ShootingExposure::whiteBalance,
          "The colour temperature that the camera was set to.");

  static final ObjectForm<ShootingExposure> FORM =
      ObjectForm.of(
          "shooting_exposure",
          "What the picture was shot with.",
          values ->
              new ShootingExposure(
                  values.get(F_NUMBER),
                  values.get(TIME),
                  values.get(ISO),
                  values.get(DENSITY),
                  values.get(WHITE_BALANCE)),
          List.of(F_NUMBER, TIME, ISO, DENSITY, WHITE_BALANCE));

  /** The settings as the engine takes them. */
  public ExposureSettings settings() {
    return new ExposureSettings(fNumber, time, iso, neutralDensity);
  }

  /** It as documents write it. */
  public Map<String, Object> toDocument() {
    return FORM.writeObject(this);
  }

  /** The same white balance with other settings. */
  public ShootingExposure with(ExposureSettings settings) {
    return new ShootingExposure(
        settings.aperture(),
        settings.time(),
        settings.iso(),
        settings.neutralDensity(),
        whiteBalance);
  }
}
