package lampwright.gear;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.MeteredReading;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/** How much light a head gives at full power: as its maker says, or as somebody metered it. */
public sealed interface Output {

  Form<Output> FORM =
      Forms.oneOf(
          "kind",
          List.of(
              new Kind<>("guide_number", ByGuideNumber.class, ByGuideNumber.OBJECT),
              new Kind<>("reading", ByReading.class, ByReading.OBJECT)));

  /** How the engine sees it. */
  HeadOutput toHeadOutput();

  /** Whether a meter found it, which is surer than a maker's word. */
  boolean isMetered();

  /**
   * A guide number: metres at ISO 100, full power, with the head's standard reflector. Makers tend
   * to overrate.
   */
  record ByGuideNumber(GuideNumber guideNumber) implements Output {

    private static final Field<ByGuideNumber, GuideNumber> GUIDE_NUMBER =
        required(
            "guide_number_m",
            Forms.number("m")
                .moreThan(0)
                .atLeast(0.1)
                .atMost(1_000)
                .maybe(64)
                .as(GuideNumber::new, GuideNumber::metresAtIso100),
            ByGuideNumber::guideNumber,
            "Metres times f-number at ISO 100, full power, standard reflector.");

    static final ObjectForm<ByGuideNumber> OBJECT =
        ObjectForm.of(
            "output_by_guide_number",
            "A head's output as a guide number.",
            values -> new ByGuideNumber(values.get(GUIDE_NUMBER)),
            List.of(GUIDE_NUMBER));

    @Override
    public HeadOutput toHeadOutput() {
      return HeadOutput.of(guideNumber);
    }

    @Override
    public boolean isMetered() {
      return false;
    }
  }

  /**
   * A reading of the head by a flat incident meter that points at it: with its standard reflector
   * where it stands in a head, with a modifier where it stands in a {@link Pairing} or a light.
   *
   * @param stopsDown how far below full power the head stood
   */
  record ByReading(FNumber fNumber, Iso iso, Metres distance, Stops stopsDown) implements Output {

    private static final Field<ByReading, FNumber> F_NUMBER =
        required("f_number", GearForms.fNumber(), ByReading::fNumber, "What the meter said.");

    private static final Field<ByReading, Iso> ISO =
        usually(
            Iso.ofMark(100),
            "iso",
            GearForms.iso(),
            ByReading::iso,
            "The meter's ISO; usually 100.");

    private static final Field<ByReading, Metres> DISTANCE =
        required(
            "distance_m",
            GearForms.length(50, 2),
            ByReading::distance,
            "From the head's face to the meter.");

    private static final Field<ByReading, Stops> STOPS_DOWN =
        usually(
            new Stops(0),
            "stops_down",
            GearForms.stops(0, 14),
            ByReading::stopsDown,
            "How far below full power the head stood; usually 0.");

    static final ObjectForm<ByReading> OBJECT =
        form(
            "output_by_reading",
            "A head's output as a meter found it, with the standard reflector.");

    /** The same reading with a modifier on the head. */
    public static final ObjectForm<ByReading> WITH_MODIFIER =
        form(
            "output_with_modifier",
            "What a flat incident meter gave that pointed at a head with its modifier on.");

    private static ObjectForm<ByReading> form(String name, String meaning) {
      return ObjectForm.of(
          name,
          meaning,
          values ->
              new ByReading(
                  values.get(F_NUMBER),
                  values.get(ISO),
                  values.get(DISTANCE),
                  values.get(STOPS_DOWN)),
          List.of(F_NUMBER, ISO, DISTANCE, STOPS_DOWN));
    }

    @Override
    public HeadOutput toHeadOutput() {
      return HeadOutput.ofStandardReflector(reading());
    }

    /** How the engine sees it where the modifier was on the head. */
    public HeadOutput toHeadOutputWithModifier() {
      return HeadOutput.ofModifier(reading());
    }

    private MeteredReading reading() {
      return new MeteredReading(fNumber, iso, distance, stopsDown, MeterConstant.FLAT);
    }

    @Override
    public boolean isMetered() {
      return true;
    }
  }
}
