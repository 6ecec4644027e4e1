package lampwright.setup;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/** One thing that the author says of how it came out. */
public record Outcome(Judgement judgement, String text) {

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

  static final ObjectForm<Outcome> FORM =
      ObjectForm.of(
          "outcome",
          "One thing that the author says of how it came out.",
          values -> new Outcome(values.get(JUDGEMENT), values.get(TEXT)),
          List.of(JUDGEMENT, TEXT));
}
