package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Metres;

/**
 * What carries a head.
 *
 * @param highest how high it carries a head
 */
public record Stand(String name, Metres highest, Optional<Double> weightKg, Optional<String> note) {

  private static final Field<Stand, String> NAME =
      required("name", GearForms.name(), Stand::name, "What the studio calls it.");
  private static final Field<Stand, Metres> HIGHEST =
      required("highest_m", GearForms.length(20, 3), Stand::highest, "How high it carries a head.");
  private static final Field<Stand, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(200).maybe(2),
          Stand::weightKg,
          "What it weighs without ballast.");
  private static final Field<Stand, Optional<String>> NOTE = GearForms.note(Stand::note);

  /** The stand as it stands in a document. */
  public static final ObjectForm<Stand> FORM =
      ObjectForm.of(
          "stand",
          "What carries a head.",
          values ->
              new Stand(
                  values.get(NAME), values.get(HIGHEST), values.get(WEIGHT), values.get(NOTE)),
          List.of(NAME, HIGHEST, WEIGHT, NOTE));
}
