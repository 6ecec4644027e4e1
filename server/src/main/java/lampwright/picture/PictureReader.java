package lampwright.picture;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads a file as a picture, or says why not. The file's own bytes decide what it is; what it is
 * called or said to be does not matter. Its size is known and bounded before anything is decoded,
 * and it is decoded in steps of pixels, so that at most {@link Decoder#MOST_DECODED} of them are
 * held.
 */
public final class PictureReader {

  private static final int LONGEST_SIDE = 30_000;

  private PictureReader() {}

  /**
   * Reads a whole file.
   *
   * @param file its bytes from 0 to its limit; they may lie in a mapped file
   */
  public static PictureReading read(ByteBuffer file) {
    try {
      Parts parts = parts(new Bytes(file));
      mustBeBounded(parts);
      return picture(parts, exif(parts), Decoder.decode(file, parts));
    } catch (Unusable.Found found) {
      return found.unusable();
    }
  }

  /** Decodes a file to its end as {@link #read} does, and makes nothing of it. */
  public static PictureExamination examine(ByteBuffer file) {
    try {
      Parts parts = parts(new Bytes(file));
      mustBeBounded(parts);
      Decoder.decode(file, parts);
      return PictureFrame.of(parts, exif(parts).orientation());
    } catch (Unusable.Found found) {
      return found.unusable();
    }
  }

  /** What a file says it is, without decoding it; empty where it is no picture. */
  public static Optional<PictureFrame> frame(ByteBuffer file) {
    try {
      Parts parts = parts(new Bytes(file));
      return Optional.of(PictureFrame.of(parts, exif(parts).orientation()));
    } catch (Unusable.Found found) {
      return Optional.empty();
    }
  }

  private static ExifFacts exif(Parts parts) {
    return parts.exif().map(ExifReader::read).orElse(ExifFacts.NONE);
  }

  static Parts parts(Bytes file) throws Unusable.Found {
    Optional<PictureFormat> format = PictureFormat.of(file);
    if (format.isEmpty()) {
      throw new Unusable.Found(
          Unusable.Reason.NOT_A_PICTURE,
          file.size() == 0
              ? "The file is empty. Send a JPEG, PNG, WebP or TIFF."
              : "The file is %s. Send a JPEG, PNG, WebP or TIFF."
                  .formatted(PictureFormat.guess(file)));
    }
    try {
      return switch (format.get()) {
        case JPEG -> JpegParts.of(file);
        case PNG -> PngParts.of(file);
        case WEBP -> WebpParts.of(file);
        case TIFF -> TiffParts.of(file);
      };
    } catch (IndexOutOfBoundsException e) {
      throw Unusable.truncated();
    }
  }

  private static void mustBeBounded(Parts parts) throws Unusable.Found {
    long pixels = (long) parts.width() * parts.height();
    int longer = Math.max(parts.width(), parts.height());
    if (longer > LONGEST_SIDE || pixels > parts.format().mostPixels()) {
      throw new Unusable.Found(
          Unusable.Reason.TOO_MANY_PIXELS,
          ("The picture (%d by %d pixels) must have at most %d a side and %d million in all for a"
                  + " %s. Send a smaller version.")
              .formatted(
                  parts.width(),
                  parts.height(),
                  LONGEST_SIDE,
                  parts.format().mostPixels() / 1_000_000,
                  parts.format()));
    }
  }

  private static Picture picture(Parts parts, ExifFacts exif, Decoded decoded)
      throws Unusable.Found {
    Orientation turn = exif.orientation();
    int longerSide = Math.max(parts.width(), parts.height());
    List<Integer> sides =
        Stream.concat(
                Stream.of(ToneStatistics.LONGER_SIDE),
                Arrays.stream(PictureSize.values()).map(PictureSize::longerSide))
            .map(side -> Math.min(side, longerSide))
            .distinct()
            .toList();
    List<Pixels> shrunk = decoded.shrunk(sides);
    Map<Integer, byte[]> written = new HashMap<>();
    Map<PictureSize, byte[]> sizes = new EnumMap<>(PictureSize.class);
    for (PictureSize size : PictureSize.values()) {
      int side = Math.min(size.longerSide(), longerSide);
      Pixels pixels = shrunk.get(sides.indexOf(side));
      sizes.put(
          size,
          written.computeIfAbsent(
              side, _ -> JpegWriter.write(turn.upright(pixels), JpegWriter.GOOD)));
    }
    PictureFrame frame = PictureFrame.of(parts, turn);
    return new Picture(
        parts.format(),
        frame.width(),
        frame.height(),
        exif,
        ToneStatistics.of(shrunk.getFirst().rgb()),
        sizes,
        parts.format() == PictureFormat.TIFF
            ? Optional.of(JpegWriter.write(turn.upright(decoded.whole()), JpegWriter.BEST))
            : Optional.empty());
  }
}
