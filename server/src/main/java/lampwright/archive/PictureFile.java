package lampwright.archive;

import static lampwright.document.Field.required;

import java.util.HexFormat;
import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/**
 * The file of a picture, which lies under its hash. What it shows and what it says of its camera is
 * not told: whoever takes the file in reads that from it.
 *
 * @param sha256 64 small hexadecimal digits
 * @param width of the upright picture, in pixels
 * @param height of the upright picture, in pixels
 */
public record PictureFile(String sha256, long bytes, String mediaType, int width, int height) {

  /** The most bytes of one. */
  public static final int MOST_BYTES = 64 << 20;

  private static final int LONGEST_SIDE = 30_000;
  private static final List<String> MEDIA_TYPES =
      List.of("image/jpeg", "image/png", "image/webp", "image/tiff");

  /** A hash as it is written. */
  static final Form<String> HASH =
      Forms.text(64)
          .like(
              "^[0-9a-f]{64}$",
              text -> text.matches("[0-9a-f]{64}"),
              "64 small hexadecimal digits");

  private static final Field<PictureFile, String> SHA256 =
      required("sha256", HASH, PictureFile::sha256, "The SHA-256 of its bytes.");
  private static final Field<PictureFile, Integer> BYTES =
      required(
          "bytes",
          Forms.count(1, MOST_BYTES),
          file -> (int) file.bytes(),
          "How many bytes it has.");
  private static final Field<PictureFile, String> MEDIA_TYPE =
      required(
          "media_type",
          Forms.text(20)
              .like(
                  "^image/(jpeg|png|webp|tiff)$",
                  MEDIA_TYPES::contains,
                  "one of " + String.join(", ", MEDIA_TYPES)),
          PictureFile::mediaType,
          "What it is.");
  private static final Field<PictureFile, Integer> WIDTH =
      required("width", Forms.count(1, LONGEST_SIDE), PictureFile::width, "Upright, in pixels.");
  private static final Field<PictureFile, Integer> HEIGHT =
      required("height", Forms.count(1, LONGEST_SIDE), PictureFile::height, "Upright, in pixels.");

  static final ObjectForm<PictureFile> FORM =
      ObjectForm.of(
          "picture_file",
          "The file of a picture.",
          values ->
              new PictureFile(
                  values.get(SHA256),
                  values.get(BYTES),
                  values.get(MEDIA_TYPE),
                  values.get(WIDTH),
                  values.get(HEIGHT)),
          List.of(SHA256, BYTES, MEDIA_TYPE, WIDTH, HEIGHT));

  /** What a file of these bytes is called. */
  public static String hash(byte[] bytes) {
    return HexFormat.of().formatHex(Bag.sha256().digest(bytes));
  }

  /** Where its bytes lie, within the bag. */
  public static String path(String sha256) {
    return Bag.PICTURES + sha256;
  }
}
