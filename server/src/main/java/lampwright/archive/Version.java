package lampwright.archive;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.setup.Standing;

/**
 * One revision of a thing.
 *
 * @param id of the thing
 * @param changedBy the key of the author
 * @param message may be empty
 * @param deleted whether the thing was taken away by it
 * @param standing of a setup
 * @param planned the revision that was planned, where a setup's tells what was really used
 * @param restoredFrom the revision that a setup's brought back
 * @param document JSON values, see {@link lampwright.document.Form}
 */
public record Version(
    String id,
    int revision,
    Instant changedAt,
    String changedBy,
    String message,
    boolean deleted,
    Optional<Standing> standing,
    Optional<Integer> planned,
    Optional<Integer> restoredFrom,
    Object document) {

  /** Characters of a message that are kept. */
  static final int LONGEST_MESSAGE = 1_000;

  private static final int MOST_REVISIONS = 999_999_999;

  private static final Field<Version, String> ID =
      required("id", Moments.ID, Version::id, "The thing's id.");
  private static final Field<Version, Integer> REVISION =
      required("revision", Forms.count(1, MOST_REVISIONS), Version::revision, "Its number.");
  private static final Field<Version, Instant> CHANGED_AT =
      required("changed_at", Moments.FORM, Version::changedAt, "When it was made.");
  private static final Field<Version, String> CHANGED_BY =
      required("changed_by", Moments.ID, Version::changedBy, "The key of who made it.");
  private static final Field<Version, String> MESSAGE =
      usually(
          "", "message", AnyText.upTo(LONGEST_MESSAGE), Version::message, "Why, in their words.");
  private static final Field<Version, Boolean> DELETED =
      usually(false, "deleted", Forms.flag(), Version::deleted, "Whether it took the thing away.");
  private static final Field<Version, Standing> STANDING =
      required(
          "standing",
          Standing.FORM,
          version -> version.standing().orElseThrow(),
          "Where the setup stood.");
  private static final Field<Version, Optional<Integer>> PLANNED =
      optional(
          "planned_revision",
          Forms.count(1, MOST_REVISIONS),
          Version::planned,
          "The revision that was planned.");
  private static final Field<Version, Optional<Integer>> RESTORED_FROM =
      optional(
          "restored_from",
          Forms.count(1, MOST_REVISIONS),
          Version::restoredFrom,
          "The revision that it brought back.");
  private static final Field<Version, Object> DOCUMENT =
      required("document", AnyObject.FORM, Version::document, "What the thing was then.");

  /** The line of a revision. */
  static final ObjectForm<Version> FORM = form("revision", List.of());

  /** The line of a setup's revision. */
  static final ObjectForm<Version> OF_SETUPS =
      form("setup_revision", List.of(STANDING, PLANNED, RESTORED_FROM));

  private static ObjectForm<Version> form(String name, List<Field<Version, ?>> more) {
    List<Field<Version, ?>> fields =
        new ArrayList<>(List.of(ID, REVISION, CHANGED_AT, CHANGED_BY, MESSAGE, DELETED));
    fields.addAll(more);
    fields.add(DOCUMENT);
    boolean ofSetups = !more.isEmpty();
    return ObjectForm.of(
        name,
        "A revision of a thing.",
        values ->
            new Version(
                values.get(ID),
                values.get(REVISION),
                values.get(CHANGED_AT),
                values.get(CHANGED_BY),
                values.get(MESSAGE),
                values.get(DELETED),
                ofSetups ? Optional.of(values.get(STANDING)) : Optional.empty(),
                ofSetups ? values.get(PLANNED) : Optional.empty(),
                ofSetups ? values.get(RESTORED_FROM) : Optional.empty(),
                values.get(DOCUMENT)),
        fields);
  }

  /** The same of a thing of another id, with another document. */
  public Version renamed(String newId, Object newDocument) {
    return new Version(
        newId,
        revision,
        changedAt,
        changedBy,
        message,
        deleted,
        standing,
        planned,
        restoredFrom,
        newDocument);
  }
}
