package lampwright.gear.stock;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.Ids;

/**
 * How many of a studio's gear a kit takes.
 *
 * @param count of a body, a lens or a grey filter a kit knows only that it is there
 */
public record GearUse(GearId id, int count) {

  private static final int LONGEST_ID = 32;

  private static final Field<GearUse, GearId> ID =
      required(
          "id",
          Forms.text(LONGEST_ID)
              .like("^[0-9a-z]{4,32}$", Ids::isId, "the id of one of the studio's gear")
              .as(GearId::new, GearId::text),
          GearUse::id,
          "The gear's id.");
  private static final Field<GearUse, Integer> COUNT =
      usually(1, "count", Forms.count(1, 99), GearUse::count, "How many of it; usually 1.");

  static final ObjectForm<GearUse> FORM =
      ObjectForm.of(
          "gear_use",
          "How many of the studio's gear a kit takes.",
          values -> new GearUse(values.get(ID), values.get(COUNT)),
          List.of(ID, COUNT));
}
