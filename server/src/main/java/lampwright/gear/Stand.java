package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

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
 * @param legRadius of the circle on which its feet stand
 * @param ballastKg that hangs on it or lies on its legs
 */
public record Stand(
    String name,
    Metres highest,
    Optional<Metres> legRadius,
    int legs,
    double ballastKg,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

  private static final Field<Stand, String> NAME =
      required("name", GearForms.name(), Stand::name, "What the studio calls it.");
  private static final Field<Stand, Metres> HIGHEST =
      required("highest_m", GearForms.length(20, 3), Stand::highest, "How high it carries a head.");
  private static final Field<Stand, Optional<Metres>> LEG_RADIUS =
      optional(
          "leg_radius_m",
          GearForms.length(10, 0.55),
          Stand::legRadius,
          "From the column to a foot, over the ground, as it is spread.");
  private static final Field<Stand, Integer> LEGS =
      usually(3, "legs", Forms.count(3, 12), Stand::legs, "How many legs; usually 3.");
  private static final Field<Stand, Double> BALLAST =
      usually(
          0.0,
          "ballast_kg",
          Forms.number("kg").atLeast(0).atMost(1_000).maybe(10),
          Stand::ballastKg,
          "The ballast that is on it; usually none.");
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
                  values.get(NAME),
                  values.get(HIGHEST),
                  values.get(LEG_RADIUS),
                  values.get(LEGS),
                  values.get(BALLAST),
                  values.get(WEIGHT),
                  values.get(NOTE)),
          List.of(NAME, HIGHEST, LEG_RADIUS, LEGS, BALLAST, WEIGHT, NOTE));
}
