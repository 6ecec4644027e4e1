package lampwright.picture;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The formats of picture that are taken, told by a file's first bytes. */
public enum PictureFormat {
  JPEG("image/jpeg", "jpg", 120_000_000),
  PNG("image/png", "png", 120_000_000),
  /** Its decoder holds the whole picture, and far more than three bytes a pixel. */
  WEBP("image/webp", "webp", 30_000_000),
  TIFF("image/tiff", "tif", 120_000_000);

  private final String mediaType;
  private final String ending;
  private final long mostPixels;

  PictureFormat(String mediaType, String ending, long mostPixels) {
    this.mediaType = mediaType;
    this.ending = ending;
    this.mostPixels = mostPixels;
  }

  /** Its registered media type. */
  public String mediaType() {
    return mediaType;
  }

  /** How names of its files end, without the dot. */
  public String ending() {
    return ending;
  }

  /** The most pixels that are decoded of it. */
  public long mostPixels() {
    return mostPixels;
  }

  /** The format that a media type names. */
  public static Optional<PictureFormat> find(String mediaType) {
    return Arrays.stream(values()).filter(format -> format.mediaType.equals(mediaType)).findFirst();
  }

  /** The format that a file begins as; empty where it is none of these. */
  static Optional<PictureFormat> of(Bytes file) {
    if (file.startsWith(0, 0xff, 0xd8, 0xff)) {
      return Optional.of(JPEG);
    }
    if (file.startsWith(0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n')) {
      return Optional.of(PNG);
    }
    if (file.startsWith(0, 'R', 'I', 'F', 'F') && file.startsWith(8, 'W', 'E', 'B', 'P')) {
      return Optional.of(WEBP);
    }
    boolean tiff = file.startsWith(0, 'I', 'I', 42, 0) || file.startsWith(0, 'M', 'M', 0, 42);
    return tiff ? Optional.of(TIFF) : Optional.empty();
  }

  /** What a file that is none of these seems to be, for the message. */
  static String guess(Bytes file) {
    String start =
        new String(file.copy(0, Math.min(256, file.size())), StandardCharsets.ISO_8859_1)
            .stripLeading();
    if (start.startsWith("GIF8")) {
      return "a GIF";
    }
    if (start.startsWith("<svg") || start.startsWith("<?xml")) {
      return "an SVG or other XML";
    }
    return start.startsWith("<") ? "a page of markup" : "something else";
  }
}
