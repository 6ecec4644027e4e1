package lampwright.setup.used;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.setup.Used;

/**
 * That a setup was really made so, told by somebody who may not change it.
 *
 * @param setupRevision that they had in hand
 */
public record Proposal(int setupRevision, Used used) {

  private static final int MOST_REVISIONS = 999_999_999;

  private static final Field<Proposal, Integer> SETUP_REVISION =
      required(
          "setup_revision",
          Forms.count(1, MOST_REVISIONS),
          Proposal::setupRevision,
          "The revision of the setup that was in hand on the day.");
  private static final Field<Proposal, Used> USED =
      required("used", Used.FORM, Proposal::used, "What was really used.");

  /** The proposal as a document. */
  public static final ObjectForm<Proposal> FORM =
      ObjectForm.of(
          "proposal",
          "That a setup was really made so; it waits for an author.",
          values -> new Proposal(values.get(SETUP_REVISION), values.get(USED)),
          List.of(SETUP_REVISION, USED));
}
