package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;

/**
 * A colour filter on a light.
 *
 * @param shift positive is warmer
 */
public record Gel(String name, Mired shift, Stops loss) implements Piece {

  private static final Field<Gel, String> NAME =
      required("name", GearForms.name(), Gel::name, "What the studio calls it.");
  private static final Field<Gel, Mired> SHIFT =
      required(
          "shift_mired",
          Forms.number("mired").atLeast(-400).atMost(400).maybe(65).as(Mired::new, Mired::value),
          Gel::shift,
          "How far it shifts colour temperature; positive is warmer. Take the sheet's own number.");
  private static final Field<Gel, Stops> LOSS =
      required("loss_stops", GearForms.stops(0, 8), Gel::loss, "The light that it takes.");

  /** The gel as it stands in a document. */
  public static final ObjectForm<Gel> FORM =
      ObjectForm.of(
          "gel",
          "A colour filter on a light.",
          values -> new Gel(values.get(NAME), values.get(SHIFT), values.get(LOSS)),
          List.of(NAME, SHIFT, LOSS));
}
