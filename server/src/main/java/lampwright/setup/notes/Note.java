package lampwright.setup.notes;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.people.Ids;
import lampwright.setup.LightId;

/**
 * What somebody wrote beside a setup, in plain text.
 *
 * @param about absent where it is about the setup as a whole
 */
public record Note(String text, Optional<About> about) {

  /** The longest note, in characters. */
  public static final int LONGEST = 4_000;

  /** What a note is about. */
  public sealed interface About {

    /** One of the setup's lights. It may be gone from a later revision. */
    record OfLight(LightId light) implements About {}

    /**
     * A point in a picture of the setup.
     *
     * @param picture its id
     * @param x share of the width from the left, 0 to 1
     * @param y share of the height from the top, 0 to 1
     */
    record OfPicture(String picture, double x, double y) implements About {}
  }

  private static final Field<About.OfLight, LightId> LIGHT =
      required("light", LightId.FORM, About.OfLight::light, "The light's id.");
  private static final Field<About.OfPicture, String> PICTURE =
      required(
          "picture",
          Forms.text(32)
              .like(
                  "^[0-9a-z]{4,32}$",
                  Ids::isId,
                  "a picture's id, 4 to 32 small letters and digits"),
          About.OfPicture::picture,
          "The picture's id.");
  private static final Field<About.OfPicture, Double> X =
      required("x", share(), About.OfPicture::x, "The share of the picture's width from the left.");
  private static final Field<About.OfPicture, Double> Y =
      required("y", share(), About.OfPicture::y, "The share of its height from the top.");

  private static final Form<About> ABOUT =
      Forms.oneOf(
          "kind",
          List.of(
              new Kind<>(
                  "light",
                  About.OfLight.class,
                  ObjectForm.of(
                      "note_of_light",
                      "It is about a light.",
                      values -> new About.OfLight(values.get(LIGHT)),
                      List.of(LIGHT))),
              new Kind<>(
                  "picture",
                  About.OfPicture.class,
                  ObjectForm.of(
                      "note_of_picture",
                      "It is about a point in a picture.",
                      values ->
                          new About.OfPicture(values.get(PICTURE), values.get(X), values.get(Y)),
                      List.of(PICTURE, X, Y)))));

  private static final Field<Note, String> TEXT =
      required("text", Forms.text(LONGEST), Note::text, "What is to be said, in plain text.");
  private static final Field<Note, Optional<About>> ABOUT_WHAT =
      optional("about", ABOUT, Note::about, "What it is about, if not the setup as a whole.");

  /** The note as a document. */
  public static final ObjectForm<Note> FORM =
      ObjectForm.of(
          "note",
          "What somebody wrote beside a setup.",
          values -> new Note(values.get(TEXT), values.get(ABOUT_WHAT)),
          List.of(TEXT, ABOUT_WHAT));

  private static Form<Double> share() {
    return Forms.number("").atLeast(0).atMost(1).maybe(0.5);
  }
}
