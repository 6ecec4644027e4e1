package lampwright.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes what a camera would, as a structure of TIFF (Exif 3.0, 4.6). */
public final class ExifWriter {

  private static final class Tag {

    private final int number;
    private final int type;
    private final int count;
    private final byte[] value;

    Tag(int number, int type, int count, byte[] value) {
      this.number = number;
      this.type = type;
      this.count = count;
      this.value = value;
    }
  }

  private ExifWriter() {}

  /** A camera at f/5.6, 1/60 s, ISO 200, 85 mm, held so, at a place, with names and numbers. */
  public static byte[] full(int orientation) {
    List<Tag> exif =
        List.of(
            fractions(0x829a, 1, 60),
            fractions(0x829d, 56, 10),
            number(0x8827, 200),
            text(0x9003, "2026:10:03 17:45:10"),
            text(0x9011, "+01:00"),
            fractions(0x920a, 85, 1),
            whole(0xa002, 6000),
            whole(0xa003, 4000),
            text(0xa430, "Somebody Invented"),
            text(0xa431, "SERIAL-0815"));
    List<Tag> gps =
        List.of(
            text(1, "N"),
            fractions(2, 54, 1, 30, 1, 36, 1),
            text(3, "W"),
            fractions(4, 3, 1, 15, 1, 0, 1));
    return structure(orientation, exif, gps);
  }

  /** Nothing but a turn. */
  public static byte[] turned(int orientation) {
    return structure(orientation, List.of(), List.of());
  }

  private static byte[] structure(int orientation, List<Tag> exif, List<Tag> gps) {
    List<Tag> first = new ArrayList<>();
    first.add(number(0x0112, orientation));
    first.add(text(0x013b, "Somebody Invented"));
    first.add(whole(0x8769, 0));
    first.add(whole(0x8825, 0));
    int firstSize = size(first);
    int exifPlace = 8 + firstSize;
    int gpsPlace = exifPlace + size(exif);
    first.set(2, whole(0x8769, exifPlace));
    first.set(3, whole(0x8825, gpsPlace));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(
        ByteBuffer.allocate(8)
            .put("MM".getBytes(StandardCharsets.US_ASCII))
            .putShort((short) 42)
            .putInt(8)
            .array());
    out.writeBytes(directory(first, 8));
    out.writeBytes(directory(exif, exifPlace));
    out.writeBytes(directory(gps, gpsPlace));
    return out.toByteArray();
  }

  private static int size(List<Tag> tags) {
    int size = 2 + 12 * tags.size() + 4;
    for (Tag tag : tags) {
      size += tag.value.length > 4 ? tag.value.length + tag.value.length % 2 : 0;
    }
    return size;
  }

  private static byte[] directory(List<Tag> tags, int place) {
    ByteBuffer head = ByteBuffer.allocate(size(tags));
    head.putShort((short) tags.size());
    int values = 2 + 12 * tags.size() + 4;
    for (Tag tag : tags) {
      head.putShort((short) tag.number).putShort((short) tag.type).putInt(tag.count);
      if (tag.value.length > 4) {
        head.putInt(place + values);
        head.put(values, tag.value);
        values += tag.value.length + tag.value.length % 2;
      } else {
        head.put(Arrays.copyOf(tag.value, 4));
      }
    }
    return head.array();
  }

  private static Tag number(int number, int value) {
    return new Tag(number, 3, 1, ByteBuffer.allocate(2).putShort((short) value).array());
  }

  private static Tag whole(int number, int value) {
    return new Tag(number, 4, 1, ByteBuffer.allocate(4).putInt(value).array());
  }

  private static Tag text(int number, String value) {
    byte[] bytes = (value + "\0").getBytes(StandardCharsets.US_ASCII);
    return new Tag(number, 2, bytes.length, bytes);
  }

  private static Tag fractions(int number, int... parts) {
    ByteBuffer bytes = ByteBuffer.allocate(4 * parts.length);
    for (int part : parts) {
      bytes.putInt(part);
    }
    return new Tag(number, 5, parts.length / 2, bytes.array());
  }
}
