package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Stops;

/** A grey filter for a lens, which takes light from flash and ambient alike. */
public record NeutralDensity(String name, Stops loss) implements Piece {

  private static final Field<NeutralDensity, String> NAME =
      required("name", GearForms.name(), NeutralDensity::name, "What the studio calls it.");
  private static final Field<NeutralDensity, Stops> LOSS =
      required(
          "loss_stops",
          GearForms.stops(0, 20),
          NeutralDensity::loss,
          "The light that it takes: a filter marked 0.9, or 8 times, takes 3 stops.");

  /** The filter as it stands in a document. */
  public static final ObjectForm<NeutralDensity> FORM =
      ObjectForm.of(
          "neutral_density",
          "A grey filter for a lens.",
          values -> new NeutralDensity(values.get(NAME), values.get(LOSS)),
          List.of(NAME, LOSS));
}
