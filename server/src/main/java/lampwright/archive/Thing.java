package lampwright.archive;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * One thing of an archive, without what its revisions say: as it is now, it is what the last of
 * them says.
 *
 * @param revision the last
 * @param createdBy the key of the author
 * @param parent what a setup was made from
 * @param setup what the thing hangs on
 * @param number of a take, on its day
 * @param file of a picture
 */
public record Thing(
    String id,
    int revision,
    Instant createdAt,
    String createdBy,
    Optional<Origin> parent,
    Optional<String> setup,
    Optional<Integer> number,
    Optional<PictureFile> file) {

  private static final int MOST_REVISIONS = 999_999_999;

  private static final Field<Thing, String> ID =
      required("id", Moments.ID, Thing::id, "The thing's id.");
  private static final Field<Thing, Integer> REVISION =
      required(
          "revision", Forms.count(1, MOST_REVISIONS), Thing::revision, "Its current revision.");
  private static final Field<Thing, Instant> CREATED_AT =
      required("created_at", Moments.FORM, Thing::createdAt, "When it was made.");
  private static final Field<Thing, String> CREATED_BY =
      required("created_by", Moments.ID, Thing::createdBy, "The key of who made it.");
  private static final Field<Thing, Optional<Origin>> PARENT =
      optional("parent", Origin.FORM, Thing::parent, "What it was made from.");
  private static final Field<Thing, String> SETUP =
      of("setup", Moments.ID, Thing::setup, "The setup that it hangs on.");
  private static final Field<Thing, Integer> NUMBER =
      of("number", Forms.count(1, MOST_REVISIONS), Thing::number, "Its number on its day.");
  private static final Field<Thing, PictureFile> FILE =
      of("file", PictureFile.FORM, Thing::file, "Its file.");

  private static <V> Field<Thing, V> of(
      String name, Form<V> form, Function<Thing, Optional<V>> getter, String m) {
    return required(name, form, thing -> getter.apply(thing).orElseThrow(), m);
  }

  /** The line of a thing that hangs on nothing. */
  static final ObjectForm<Thing> FORM = form("thing", List.of());

  /** The line of a setup. */
  static final ObjectForm<Thing> OF_SETUPS = form("setup_thing", List.of(PARENT));

  /** The line of a picture. */
  static final ObjectForm<Thing> OF_PICTURES = form("picture_thing", List.of(SETUP, FILE));

  /** The line of a take. */
  static final ObjectForm<Thing> OF_TAKES = form("take_thing", List.of(SETUP, NUMBER));

  /** The line of a note. */
  static final ObjectForm<Thing> OF_NOTES = form("note_thing", List.of(SETUP));

  private static ObjectForm<Thing> form(String name, List<Field<Thing, ?>> more) {
    List<Field<Thing, ?>> fields = new ArrayList<>(List.of(ID, REVISION, CREATED_AT, CREATED_BY));
    fields.addAll(more);
    return ObjectForm.of(
        name,
        "A thing of an archive.",
        values ->
            new Thing(
                values.get(ID),
                values.get(REVISION),
                values.get(CREATED_AT),
                values.get(CREATED_BY),
                more.contains(PARENT) ? values.get(PARENT) : Optional.empty(),
                more.contains(SETUP) ? Optional.of(values.get(SETUP)) : Optional.empty(),
                more.contains(NUMBER) ? Optional.of(values.get(NUMBER)) : Optional.empty(),
                more.contains(FILE) ? Optional.of(values.get(FILE)) : Optional.empty()),
        fields);
  }

  /**
   * What a setup was made from.
   *
   * @param id of the other setup
   */
  public record Origin(String id, int revision) {

    private static final Field<Origin, String> OF =
        required("id", Moments.ID, Origin::id, "The other setup's id.");
    private static final Field<Origin, Integer> AT =
        required("revision", Forms.count(1, MOST_REVISIONS), Origin::revision, "Its revision.");

    static final ObjectForm<Origin> FORM =
        ObjectForm.of(
            "origin",
            "What a setup was made from.",
            values -> new Origin(values.get(OF), values.get(AT)),
            List.of(OF, AT));
  }

  /** The same under other ids. */
  public Thing renamed(String newId, Optional<Origin> newParent, Optional<String> newSetup) {
    return new Thing(newId, revision, createdAt, createdBy, newParent, newSetup, number, file);
  }
}
