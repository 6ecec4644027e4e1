package lampwright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The segments of a JPEG file (ITU-T T.81, annex B; Exif 3.0, 4.5; ICC.1, annex B.4). */
final class JpegParts {

  private static final int START = 0xd8;
  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int FIRST_APPLICATION = 0xe0;
  private static final int LAST_APPLICATION = 0xef;
  private static final int COMMENT = 0xfe;
  private static final String EXIF = "Exif\0\0";

  private final Bytes file;
  private final List<Parts.Part> parts = new ArrayList<>();
  private Optional<Bytes> exif = Optional.empty();
  private int width;
  private int height;

  private JpegParts(Bytes file) {
    this.file = file;
  }

  static Parts of(Bytes file) throws Unusable.Found {
    return new JpegParts(file).read();
  }

  private Parts read() throws Unusable.Found {
    int at = 0;
    while (true) {
      int marker = marker(at);
      int end = end(at, marker);
      parts.add(new Parts.Part(Integer.toHexString(marker), at, end, isNeeded(at, end, marker)));
      look(at, end, marker);
      if (marker == END) {
        break;
      }
      at = end;
    }
    if (width == 0 || height == 0) {
      throw Unusable.unreadable("The JPEG does not say how large it is.");
    }
    return new Parts(PictureFormat.JPEG, width, height, parts, exif, Optional.empty());
  }

  private int marker(int at) throws Unusable.Found {
    if (!file.has(at, 2)) {
      throw Unusable.truncated();
    }
    if (file.u8(at) != 0xff) {
      throw Unusable.unreadable("The JPEG has bytes between its segments that belong to none.");
    }
    return file.u8(at + 1);
  }

  private int end(int at, int marker) throws Unusable.Found {
    // Any number of 0xff may stand before a marker.
    if (marker == START || marker == END) {
      return at + 2;
    }
    if (marker == 0xff) {
      return at + 1;
    }
    if (!file.has(at, 4)) {
      throw Unusable.truncated();
    }
    int length = file.u16(at + 2);
    if (length < 2) {
      throw Unusable.unreadable("A segment of the JPEG has no length.");
    }
    long end = at + 2L + length;
    if (end > file.size()) {
      throw Unusable.truncated();
    }
    return marker == SCAN ? endOfScan((int) end) : (int) end;
  }

  /** Past the coded picture: to the first marker that is no stuffed byte and no restart. */
  private int endOfScan(int start) throws Unusable.Found {
    for (int at = start; at + 1 < file.size(); at++) {
      if (file.u8(at) == 0xff) {
        int next = file.u8(at + 1);
        boolean inside = next == 0 || next == 0xff || (next >= 0xd0 && next <= 0xd7);
        if (!inside) {
          return at;
        }
      }
    }
    throw Unusable.truncated();
  }

  private boolean isNeeded(int at, int end, int marker) {
    if (marker == COMMENT) {
      return false;
    }
    if (marker < FIRST_APPLICATION || marker > LAST_APPLICATION) {
      return true;
    }
    return switch (marker) {
      // A head of this length holds no small picture.
      case 0xe0 -> file.startsWith(at + 4, "JFIF\0") && end - at == 18;
      case 0xe2 -> file.startsWith(at + 4, "ICC_PROFILE\0");
      case 0xee -> file.startsWith(at + 4, "Adobe") && end - at == 16;
      default -> false;
    };
  }

  private void look(int at, int end, int marker) throws Unusable.Found {
    boolean frame =
        marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    if (frame) {
      if (end - at < 10 || width != 0) {
        throw Unusable.unreadable("The JPEG does not say once how large it is.");
      }
      height = file.u16(at + 5);
      width = file.u16(at + 7);
    }
    int head = at + 4 + EXIF.length();
    if (marker == 0xe1 && exif.isEmpty() && file.startsWith(at + 4, EXIF) && head <= end) {
      exif = Optional.of(file.part(head, end - head));
    }
  }
}
