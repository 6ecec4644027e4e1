package lampwright.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/**
 * A picture file without what is not needed to show it: no place, no names, no numbers of cameras,
 * no notes, nothing behind its end. The coded pixels are the same bytes; how it stands upright is
 * written anew.
 */
public final class CleanedFile {

  private static final int ORIENTATION_BYTES = 26;

  private CleanedFile() {}

  /**
   * The cleaned file, as pieces to be written one after the other; most are parts of the source.
   *
   * @param file a JPEG, PNG or WebP that {@link PictureReader} has read
   * @throws IllegalArgumentException where it is no such file
   */
  public static List<ByteBuffer> of(ByteBuffer file) {
    Bytes bytes = new Bytes(file);
    Parts parts;
    try {
      parts = PictureReader.parts(bytes);
    } catch (Unusable.Found e) {
      throw new IllegalArgumentException("A stored picture is none", e);
    }
    Orientation turn = parts.exif().map(ExifReader::read).orElse(ExifFacts.NONE).orientation();
    return switch (parts.format()) {
      case JPEG -> needed(bytes, parts, 1, jpegExif(turn));
      case PNG -> needed(bytes, parts, 2, pngExif(turn));
      case WEBP -> webp(bytes, parts, turn);
      case TIFF -> throw new IllegalArgumentException("A TIFF cannot be cleaned part by part");
    };
  }

  private static List<ByteBuffer> needed(Bytes file, Parts parts, int place, byte[] exif) {
    List<ByteBuffer> pieces = new ArrayList<>();
    for (int i = 0; i < parts.parts().size(); i++) {
      if (i == place && exif.length > 0) {
        pieces.add(ByteBuffer.wrap(exif));
      }
      Parts.Part part = parts.parts().get(i);
      if (part.needed()) {
        pieces.add(file.slice(part.start(), part.end() - part.start()));
      }
    }
    return pieces;
  }

  /** A structure of TIFF with one tag. */
  private static byte[] orientation(Orientation turn) {
    return ByteBuffer.allocate(ORIENTATION_BYTES)
        .put("MM".getBytes(StandardCharsets.US_ASCII))
        .putShort((short) 42)
        .putInt(8)
        .putShort((short) 1)
        .putShort((short) 0x0112)
        .putShort((short) 3)
        .putInt(1)
        .putShort((short) turn.tag())
        .putShort((short) 0)
        .putInt(0)
        .array();
  }

  private static byte[] jpegExif(Orientation turn) {
    if (turn.tag() == 1) {
      return new byte[0];
    }
    return ByteBuffer.allocate(10 + ORIENTATION_BYTES)
        .putShort((short) 0xffe1)
        .putShort((short) (8 + ORIENTATION_BYTES))
        .put("Exif\0\0".getBytes(StandardCharsets.US_ASCII))
        .put(orientation(turn))
        .array();
  }

  private static byte[] pngExif(Orientation turn) {
    if (turn.tag() == 1) {
      return new byte[0];
    }
    ByteBuffer chunk = ByteBuffer.allocate(12 + ORIENTATION_BYTES);
    chunk.putInt(ORIENTATION_BYTES);
    chunk.put("eXIf".getBytes(StandardCharsets.US_ASCII)).put(orientation(turn));
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, 4 + ORIENTATION_BYTES);
    return chunk.putInt((int) sum.getValue()).array();
  }

  private static List<ByteBuffer> webp(Bytes file, Parts parts, Orientation turn) {
    List<ByteBuffer> pieces = new ArrayList<>();
    boolean extended = false;
    for (Parts.Part part : parts.parts()) {
      boolean head = part.name().equals("VP8X");
      extended |= head;
      if (part.needed() && !part.name().equals("RIFF")) {
        pieces.add(
            head
                ? extended(file, part, turn)
                : file.slice(part.start(), part.end() - part.start()));
      }
    }
    if (extended && turn.tag() != 1) {
      pieces.add(
          ByteBuffer.allocate(8 + ORIENTATION_BYTES)
              .order(ByteOrder.LITTLE_ENDIAN)
              .put("EXIF".getBytes(StandardCharsets.US_ASCII))
              .putInt(ORIENTATION_BYTES)
              .put(orientation(turn))
              .flip());
    }
    int size = pieces.stream().mapToInt(ByteBuffer::remaining).sum();
    pieces.addFirst(
        ByteBuffer.allocate(12)
            .order(ByteOrder.LITTLE_ENDIAN)
            .put("RIFF".getBytes(StandardCharsets.US_ASCII))
            .putInt(4 + size)
            .put("WEBP".getBytes(StandardCharsets.US_ASCII))
            .flip());
    return pieces;
  }

  /** Its flags say what follows: XMP (0x04) no longer, Exif (0x08) only the turn. */
  private static ByteBuffer extended(Bytes file, Parts.Part part, Orientation turn) {
    byte[] copy = file.copy(part.start(), part.end() - part.start());
    copy[8] = (byte) ((copy[8] & ~0x0c) | (turn.tag() == 1 ? 0 : 0x08));
    return ByteBuffer.wrap(copy);
  }
}
