package lampwright.picture;

import java.util.Map;
import java.util.Optional;

/**
 * What was read of a picture.
 *
 * @param width of the upright picture, in pixels
 * @param height of the upright picture, in pixels
 * @param sizes every {@link PictureSize}, JPEG in sRGB without a word of the source's
 * @param download a JPEG to give out in place of the file, where its format cannot be cleaned
 */
public record Picture(
    PictureFormat format,
    int width,
    int height,
    ExifFacts exif,
    ToneStatistics statistics,
    Map<PictureSize, byte[]> sizes,
    Optional<byte[]> download)
    implements PictureReading {

  public Picture {
    sizes = Map.copyOf(sizes);
  }
}
