package lampwright.gear.calibration;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;

/**
 * A head that was read.
 *
 * @param makers the maker's guide number for full power and the standard reflector
 * @param makersUncertainty its standard deviation, above 0
 */
public record HeadOnSheet(String name, Optional<GuideNumber> makers, Stops makersUncertainty) {

  /** Makers' numbers are half a stop or more optimistic (source guide-number). */
  public static final Stops USUAL_UNCERTAINTY = new Stops(0.5);

  private static final Field<HeadOnSheet, String> NAME =
      required("name", GearForms.name(), HeadOnSheet::name, "What the studio calls it.");
  private static final Field<HeadOnSheet, Optional<GuideNumber>> MAKERS =
      optional(
          "guide_number_m",
          Forms.number("m")
              .moreThan(0)
              .atLeast(0.1)
              .atMost(1_000)
              .maybe(64)
              .as(GuideNumber::new, GuideNumber::metresAtIso100),
          HeadOnSheet::makers,
          "What its maker says: metres at ISO 100, full power, standard reflector.");
  private static final Field<HeadOnSheet, Stops> UNCERTAINTY =
      usually(
          USUAL_UNCERTAINTY,
          "guide_number_uncertainty_stops",
          GearForms.stops(0.05, 3),
          HeadOnSheet::makersUncertainty,
          "How far off the maker's word may be, one standard deviation; usually half a stop.");

  static final ObjectForm<HeadOnSheet> FORM =
      ObjectForm.of(
          "head_on_sheet",
          "A head that was read.",
          values -> new HeadOnSheet(values.get(NAME), values.get(MAKERS), values.get(UNCERTAINTY)),
          List.of(NAME, MAKERS, UNCERTAINTY));
}
