package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * What people say of a picture.
 *
 * @param mayShowPlace whether the file may be given out with where and with what it was taken
 */
public record PictureNote(PictureKind kind, Optional<String> caption, boolean mayShowPlace) {

  /** The most pictures that one setup has. */
  public static final int MOST_OF_A_SETUP = 500;

  private static final Field<PictureNote, PictureKind> KIND =
      required(
          "kind", Forms.choice(PictureKind.values()), PictureNote::kind, "What the picture shows.");
  private static final Field<PictureNote, Optional<String>> CAPTION =
      optional(
          "caption",
          Forms.text(500),
          PictureNote::caption,
          "What is seen on it, also for those who cannot see it.");
  private static final Field<PictureNote, Boolean> MAY_SHOW_PLACE =
      usually(
          false,
          "may_show_place",
          Forms.flag(),
          PictureNote::mayShowPlace,
          "Whether the file is given out with its place, names and serial numbers; usually not.");

  public static final ObjectForm<PictureNote> FORM =
      ObjectForm.of(
          "picture_note",
          "What people say of a picture.",
          values ->
              new PictureNote(values.get(KIND), values.get(CAPTION), values.get(MAY_SHOW_PLACE)),
          List.of(KIND, CAPTION, MAY_SHOW_PLACE));
}
