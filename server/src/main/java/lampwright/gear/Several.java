package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.function.Function;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.ObjectForm;

/**
 * A number of pieces of the same gear in a kit.
 *
 * @param count how many
 * @param item what they are
 */
public record Several<G>(int count, G item) {

  /** How several pieces stand in a kit: {@code {"count": 4, "head": {…}}}. */
  static <G> ObjectForm<Several<G>> form(String noun, Form<G> item) {
    Function<Several<G>, Integer> count = Several::count;
    Function<Several<G>, G> what = Several::item;
    Field<Several<G>, Integer> countField = GearForms.count(count);
    Field<Several<G>, G> itemField = required(noun, item, what, "What they are.");
    return ObjectForm.of(
        noun + "_in_kit",
        "Pieces of the same gear in a kit.",
        values -> new Several<>(values.get(countField), values.get(itemField)),
        List.of(countField, itemField));
  }
}
