package lampwright.picture;

import java.util.List;
import java.util.Optional;

/**
 * What a file is made of, found without decoding it.
 *
 * @param width as stored, before it is turned upright
 * @param height as stored
 * @param parts the whole picture in order, and nothing that follows its end
 * @param exif what the camera wrote, as a structure of TIFF
 * @param profile what colours its numbers mean, where the decoder does not see to it itself
 */
record Parts(
    PictureFormat format,
    int width,
    int height,
    List<Part> parts,
    Optional<Bytes> exif,
    Optional<byte[]> profile) {

  Parts {
    parts = List.copyOf(parts);
  }

  /**
   * One segment or chunk.
   *
   * @param name of its format
   * @param start of the whole part with its head
   * @param end the first byte after it
   * @param needed whether the picture is not the same without it; what is not may tell of people
   */
  record Part(String name, int start, int end, boolean needed) {}
}
