package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * One thing that the author says of how it came out.
 *
 * @param text what it is about, and why it is judged so
 * @param light that it is about; absent where it is about no light alone
 */
public record Outcome(Judgement judgement, String text, Optional<LightId> light) {

  /** The author's judgement. */
  public enum Judgement {
    WORKED,
    MISTAKE,
    MISTAKE_KEPT,
    RETOUCHED,
    DO_DIFFERENTLY
  }

  private static final Field<Outcome, Judgement> JUDGEMENT =
      required("judgement", Forms.choice(Judgement.values()), Outcome::judgement, "The judgement.");
  private static final Field<Outcome, String> TEXT =
      required("text", SetupForms.paragraph(), Outcome::text, "What it is about, and why.");
  private static final Field<Outcome, Optional<LightId>> LIGHT =
      optional("light", LightId.FORM, Outcome::light, "The light that it is about, if it is one.");

  static final ObjectForm<Outcome> FORM =
      ObjectForm.of(
          "outcome",
          "One thing that the author says of how it came out.",
          values -> new Outcome(values.get(JUDGEMENT), values.get(TEXT), values.get(LIGHT)),
          List.of(JUDGEMENT, TEXT, LIGHT));
}
