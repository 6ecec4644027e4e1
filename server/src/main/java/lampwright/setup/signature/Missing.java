package lampwright.setup.signature;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * A part that a signature does not have.
 *
 * @param because why not
 * @param needs what the document would have to say, as JSON Pointers
 */
public record Missing(PartName part, Why because, List<String> needs) {

  private static final Field<Missing, PartName> PART =
      required("part", Forms.choice(PartName.values()), Missing::part, "Which part is not there.");
  private static final Field<Missing, Why> BECAUSE =
      required("because", Forms.text(400).as(Why::ofText, Why::text), Missing::because, "Why not.");
  private static final Field<Missing, List<String>> NEEDS =
      list(
          "needs",
          Forms.text(400),
          400,
          Missing::needs,
          "What the document would have to say, as JSON Pointers.");

  static final ObjectForm<Missing> FORM =
      ObjectForm.of(
          "missing_part",
          "A part that the signature does not have.",
          values -> new Missing(values.get(PART), values.get(BECAUSE), values.get(NEEDS)),
          List.of(PART, BECAUSE, NEEDS));

  public Missing {
    needs = List.copyOf(needs);
  }
}
