package lampwright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The chunks of a WebP file (RFC 9649). */
final class WebpParts {

  private static final int HEAD = 12;
  private static final Set<String> NEEDED = Set.of("VP8X", "VP8 ", "VP8L", "ALPH", "ICCP");

  private final Bytes file;
  private final List<Parts.Part> parts = new ArrayList<>();
  private Optional<Bytes> exif = Optional.empty();
  private int width;
  private int height;

  private WebpParts(Bytes file) {
    this.file = file.littleEndian();
  }

  static Parts of(Bytes file) throws Unusable.Found {
    return new WebpParts(file).read();
  }

  private Parts read() throws Unusable.Found {
    long end = 8 + file.u32(4);
    if (end > file.size()) {
      throw Unusable.truncated();
    }
    parts.add(new Parts.Part("RIFF", 0, HEAD, true));
    int at = HEAD;
    while (at < end) {
      if (at + 8 > end || at + 8 + file.u32(at + 4) > end) {
        throw Unusable.truncated();
      }
      int length = (int) file.u32(at + 4);
      String name = file.text(at, 4);
      int next = (int) Math.min(end, at + 8L + length + length % 2);
      parts.add(new Parts.Part(name, at, next, NEEDED.contains(name)));
      look(name, at + 8, length);
      at = next;
    }
    if (width == 0 || height == 0) {
      throw Unusable.unreadable("The WebP holds no picture.");
    }
    return new Parts(PictureFormat.WEBP, width, height, parts, exif, Optional.empty());
  }

  private void look(String name, int at, int length) throws Unusable.Found {
    switch (name) {
      case "ANIM", "ANMF" -> throw Unusable.unreadable("The WebP moves; one picture is needed.");
      case "VP8X" -> mustBe(length >= 10, 1 + u24(at + 4), 1 + u24(at + 7));
      case "VP8L" -> {
        long sides = length >= 5 ? file.u32(at + 1) : 0;
        mustBe(
            length >= 5 && file.u8(at) == 0x2f,
            1 + (int) (sides & 0x3fff),
            1 + (int) ((sides >> 14) & 0x3fff));
      }
      case "VP8 " -> {
        boolean begins = length >= 10 && file.startsWith(at + 3, 0x9d, 0x01, 0x2a);
        mustBe(
            begins, begins ? file.u16(at + 6) & 0x3fff : 0, begins ? file.u16(at + 8) & 0x3fff : 0);
      }
      case "EXIF" -> {
        // Some writers put the head of a JPEG segment before it.
        int head = file.startsWith(at, "Exif\0\0") ? 6 : 0;
        if (exif.isEmpty() && length >= head) {
          exif = Optional.of(new Bytes(file.slice(at + head, length - head)));
        }
      }
      default -> {}
    }
  }

  /** The canvas and the picture on it must be of one size, so that no other one is decoded. */
  private void mustBe(boolean wellFormed, int saidWidth, int saidHeight) throws Unusable.Found {
    boolean same = width == 0 || (width == saidWidth && height == saidHeight);
    if (!wellFormed || !same || saidWidth == 0 || saidHeight == 0) {
      throw Unusable.unreadable("The WebP does not say how large it is.");
    }
    width = saidWidth;
    height = saidHeight;
  }

  private int u24(int at) {
    return file.u16(at) | (file.u8(at + 2) << 16);
  }
}
