package lampwright.gear.stock;

import static lampwright.document.Field.required;

import java.time.LocalDate;
import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/** What somebody noticed of a piece of gear, and when. */
public record ConditionNote(LocalDate date, String note) {

  private static final int LONGEST = 1_000;

  private static final Field<ConditionNote, LocalDate> DATE =
      required("date", Forms.date(), ConditionNote::date, "When it was noticed.");
  private static final Field<ConditionNote, String> NOTE =
      required("note", Forms.text(LONGEST), ConditionNote::note, "What was noticed.");

  static final ObjectForm<ConditionNote> FORM =
      ObjectForm.of(
          "condition_note",
          "What somebody noticed of a piece of gear.",
          values -> new ConditionNote(values.get(DATE), values.get(NOTE)),
          List.of(DATE, NOTE));
}
