package lampwright.gear.calibration;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.MeteredReading;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;

/**
 * One reading of one head from its axis, in the dark.
 *
 * @param head its name on the sheet
 * @param modifier its name on the sheet; absent for the standard reflector
 * @param fNumber the mark that the meter showed
 * @param tenths the tenths of a stop that it showed on top, from 0 to 9
 */
public record CalibrationReading(
    String head,
    Optional<String> modifier,
    FNumber fNumber,
    int tenths,
    Iso iso,
    Metres distance,
    Stops stopsDown,
    MeterConstant constant) {

  private static final Field<CalibrationReading, String> HEAD =
      required(
          "head", GearForms.name(), CalibrationReading::head, "The head's name on this sheet.");
  private static final Field<CalibrationReading, Optional<String>> MODIFIER =
      optional(
          "modifier",
          GearForms.name(),
          CalibrationReading::modifier,
          "The modifier's name on this sheet; left out for the head's standard reflector.");
  private static final Field<CalibrationReading, FNumber> F_NUMBER =
      required(
          "f_number",
          GearForms.fNumber(),
          CalibrationReading::fNumber,
          "What the meter showed, without the tenths.");
  private static final Field<CalibrationReading, Integer> TENTHS =
      usually(
          0,
          "tenths",
          Forms.count(0, 9),
          CalibrationReading::tenths,
          "Tenths of a stop on top of the f-number; usually 0.");
  private static final Field<CalibrationReading, Iso> ISO =
      usually(
          Iso.ofMark(100),
          "iso",
          GearForms.iso(),
          CalibrationReading::iso,
          "The meter's ISO; usually 100.");
  private static final Field<CalibrationReading, Metres> DISTANCE =
      required(
          "distance_m",
          GearForms.length(50, 2),
          CalibrationReading::distance,
          "From the face that the light leaves by to the meter.");
  private static final Field<CalibrationReading, Stops> STOPS_DOWN =
      usually(
          new Stops(0),
          "stops_down",
          GearForms.stops(0, 14),
          CalibrationReading::stopsDown,
          "How far below full power the head stood; usually 0.");
  private static final Field<CalibrationReading, MeterConstant> CONSTANT =
      usually(
          MeterConstant.FLAT,
          "meter_constant_lx_s",
          Forms.number("lx·s")
              .atLeast(100)
              .atMost(1_000)
              .maybe(250)
              .as(MeterConstant::new, MeterConstant::luxSeconds),
          CalibrationReading::constant,
          "The meter's constant C; usually 250, a flat receptor.");

  /** The reading as it stands in a document. */
  public static final ObjectForm<CalibrationReading> FORM =
      ObjectForm.of(
          "calibration_reading",
          "What an incident meter gave that pointed at one head from its axis, in the dark.",
          values ->
              new CalibrationReading(
                  values.get(HEAD),
                  values.get(MODIFIER),
                  values.get(F_NUMBER),
                  values.get(TENTHS),
                  values.get(ISO),
                  values.get(DISTANCE),
                  values.get(STOPS_DOWN),
                  values.get(CONSTANT)),
          List.of(HEAD, MODIFIER, F_NUMBER, TENTHS, ISO, DISTANCE, STOPS_DOWN, CONSTANT));

  /** How the engine sees it. */
  public MeteredReading toMeteredReading() {
    return new MeteredReading(fNumber.withTenths(tenths), iso, distance, stopsDown, constant);
  }
}
