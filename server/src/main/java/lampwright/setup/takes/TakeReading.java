package lampwright.setup.takes;

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
import lampwright.gear.GearForms;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;

/** What the meter gave for one light alone at its target, on the day. */
public record TakeReading(LightId light, MeterReading meter) {

  private static final Field<TakeReading, LightId> LIGHT =
      required("light", LightId.FORM, TakeReading::light, "The light that fired alone.");
  private static final Field<TakeReading, FNumber> F_NUMBER =
      required(
          "f_number",
          GearForms.fNumber(),
          reading -> reading.meter().printed(),
          "What the meter said, such as 5.6.");
  private static final Field<TakeReading, Integer> TENTHS =
      usually(
          0,
          "tenths",
          Forms.count(0, 9),
          reading -> reading.meter().tenths(),
          "Tenths of a stop that the meter showed after the f-number; usually 0.");
  private static final Field<TakeReading, Optional<Iso>> ISO =
      optional(
          "iso",
          GearForms.iso(),
          reading -> reading.meter().iso(),
          "The meter's ISO, where it is not that of the setup's revision.");
  private static final Field<TakeReading, Boolean> WITH_AMBIENT =
      usually(
          false,
          "includes_ambient",
          Forms.flag(),
          reading -> reading.meter().includesAmbient(),
          "Whether the meter saw the ambient at the shooting time too; usually not.");
  private static final Field<TakeReading, MeterReading.Receptor> RECEPTOR =
      usually(
          MeterReading.Receptor.FLAT,
          "receptor",
          Forms.choice(MeterReading.Receptor.values()),
          reading -> reading.meter().receptor(),
          "What the meter took the light with; usually flat.");

  /** The reading as a document. */
  public static final ObjectForm<TakeReading> FORM =
      ObjectForm.of(
          "take_reading",
          "What the meter gave for one light alone at its target, on the day.",
          values ->
              new TakeReading(
                  values.get(LIGHT),
                  new MeterReading(
                      values.get(F_NUMBER),
                      values.get(TENTHS),
                      values.get(ISO),
                      Known.METERED,
                      values.get(WITH_AMBIENT),
                      values.get(RECEPTOR))),
          List.of(LIGHT, F_NUMBER, TENTHS, ISO, WITH_AMBIENT, RECEPTOR));
}
