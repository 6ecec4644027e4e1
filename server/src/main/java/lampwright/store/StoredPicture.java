package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import lampwright.setup.PictureId;
import lampwright.setup.SetupId;

/**
 * A picture as it is now.
 *
 * @param document JSON: what people say of it
 * @param file what its file is
 */
public record StoredPicture(
    PictureId id,
    SetupId setup,
    int revision,
    String document,
    File file,
    Instant createdAt,
    Instant changedAt,
    PersonId changedBy) {

  /**
   * What never changes of a picture.
   *
   * @param sha256 of its bytes, 64 small hexadecimal digits
   * @param width in pixels, upright
   * @param height in pixels, upright
   * @param facts JSON: what the file itself says
   * @param statistics JSON: its tones and colours
   */
  public record File(
      String sha256,
      long bytes,
      String mediaType,
      int width,
      int height,
      String facts,
      String statistics) {}
}
