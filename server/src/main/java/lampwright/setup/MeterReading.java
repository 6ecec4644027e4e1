package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;

/**
 * What an incident meter gave for one light alone at its target.
 *
 * @param printed the full stop that the meter showed
 * @param tenths how many tenths of a stop the meter showed after it
 * @param receptor what the meter took the light with
 * @param iso the meter's ISO; absent means the shooting exposure's
 */
public record MeterReading(
    FNumber printed,
    int tenths,
    Optional<Iso> iso,
    Known known,
    boolean includesAmbient,
    Receptor receptor) {

  /** What a meter takes light with. */
  public enum Receptor {
    FLAT,
    DOME;

    /** The constant that its readings are made with. */
    public MeterConstant constant() {
      return this == FLAT ? MeterConstant.FLAT : MeterConstant.DOME;
    }
  }

  private static final Field<MeterReading, FNumber> F_NUMBER =
      required(
          "f_number",
          GearForms.fNumber(),
          MeterReading::printed,
          "What the meter said, such as 5.6.");
  private static final Field<MeterReading, Integer> TENTHS =
      usually(
          0,
          "tenths",
          Forms.count(0, 9),
          MeterReading::tenths,
          "Tenths of a stop that the meter showed after the f-number; usually 0.");
  private static final Field<MeterReading, Optional<Iso>> ISO =
      optional(
          "iso",
          GearForms.iso(),
          MeterReading::iso,
          "The meter's ISO, where it is not the shooting exposure's.");
  private static final Field<MeterReading, Known> KNOWN =
      usually(
          Known.METERED,
          "known",
          SetupForms.known(),
          MeterReading::known,
          "How it is known; usually metered.");
  private static final Field<MeterReading, Boolean> WITH_AMBIENT =
      usually(
          false,
          "includes_ambient",
          Forms.flag(),
          MeterReading::includesAmbient,
          "Whether the meter saw the ambient at the shooting time too; usually not.");
  private static final Field<MeterReading, Receptor> RECEPTOR =
      usually(
          Receptor.FLAT,
          "receptor",
          Forms.choice(Receptor.values()),
          MeterReading::receptor,
          "What the meter took the light with; usually flat. A dome is read with a constant of its"
              + " own.");

  /** The reading as a document. */
  public static final ObjectForm<MeterReading> FORM =
      ObjectForm.of(
          "meter_reading",
          "What an incident meter gave for one light alone at its target.",
          values ->
              new MeterReading(
                  values.get(F_NUMBER),
                  values.get(TENTHS),
                  values.get(ISO),
                  values.get(KNOWN),
                  values.get(WITH_AMBIENT),
                  values.get(RECEPTOR)),
          List.of(F_NUMBER, TENTHS, ISO, KNOWN, WITH_AMBIENT, RECEPTOR));

  /** The exact f-number, tenths included. */
  public FNumber fNumber() {
    return printed.withTenths(tenths);
  }

  /** The same light after its power was turned by so many stops; the dial says so, no meter. */
  public MeterReading turnedBy(Stops change) {
    return new MeterReading(
        fNumber().closedBy(change), 0, iso, Known.SET, includesAmbient, receptor);
  }

  /** The same where the meter's ISO is said, if it was the shooting exposure's. */
  public MeterReading withIsoOr(Iso shooting) {
    return new MeterReading(
        printed, tenths, iso.or(() -> Optional.of(shooting)), known, includesAmbient, receptor);
  }
}
