package lampwright.place;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Amperes;

/**
 * The mains at a location.
 *
 * @param mains whether there are any
 * @param current that one circuit carries
 */
public record Power(
    boolean mains, Optional<Integer> outlets, Optional<Amperes> current, Optional<String> note) {

  private static final Field<Power, Boolean> MAINS =
      required("mains", Forms.flag(), Power::mains, "Whether there is a mains supply.");
  private static final Field<Power, Optional<Integer>> OUTLETS =
      optional("outlets", Forms.count(1, 200), Power::outlets, "How many outlets one may use.");
  private static final Field<Power, Optional<Amperes>> CURRENT =
      optional(
          "current_a",
          Forms.number("A").moreThan(0).atMost(400).maybe(16).as(Amperes::new, Amperes::value),
          Power::current,
          "The current that one circuit carries.");
  private static final Field<Power, Optional<String>> NOTE =
      optional("note", PlaceForms.paragraph(), Power::note, "Where it is, and who switches it on.");

  static final ObjectForm<Power> FORM =
      ObjectForm.<Power>of(
              "location_power",
              "The mains at a location. Outlets and current go with mains only.",
              values ->
                  new Power(
                      values.get(MAINS),
                      values.get(OUTLETS),
                      values.get(CURRENT),
                      values.get(NOTE)),
              List.of(MAINS, OUTLETS, CURRENT, NOTE))
          .checked(
              (power, at, problems) -> {
                if (!power.mains()
                    && (power.outlets().isPresent() || power.current().isPresent())) {
                  problems.add(
                      at.field("mains"),
                      "Mains (false) must be true where outlets or a current are told.");
                }
              });
}
