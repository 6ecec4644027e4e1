package lampwright.setup;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Locale;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * Where a setup stands in the catalogue; its document does not say.
 *
 * @param archived put by: kept and found only where one asks for it
 */
public record Standing(State state, boolean archived) {

  /** Whether a setup may be relied on. */
  public enum State {
    /** Still worked on. */
    DRAFT,
    /** Tried out and found good. */
    PROVEN;

    /** The state as documents and the database write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The state that a word names.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static State of(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }

  /** Where each new setup stands. */
  public static final Standing DRAFT = new Standing(State.DRAFT, false);

  /** Where a setup stands that everybody may see. */
  public static final Standing PROVEN = new Standing(State.PROVEN, false);

  private static final Field<Standing, State> STATE =
      required("state", Forms.choice(State.values()), Standing::state, "Draft or proven.");
  private static final Field<Standing, Boolean> ARCHIVED =
      required("archived", Forms.flag(), Standing::archived, "Whether it is put by.");

  /** The standing as a document. */
  public static final ObjectForm<Standing> FORM =
      ObjectForm.of(
          "standing",
          "Where a setup stands in the catalogue.",
          values -> new Standing(values.get(STATE), values.get(ARCHIVED)),
          List.of(STATE, ARCHIVED));
}
