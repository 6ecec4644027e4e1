package lampwright.picture;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** The chunks of a PNG file (ISO/IEC 15948, PNG third edition). */
final class PngParts {

  private static final int SIGNATURE = 8;
  private static final int AROUND = 12;
  private static final int LARGEST_PROFILE = 4 << 20;
  private static final int LARGEST_EXIF = 1 << 20;
  private static final Set<String> NEEDED =
      Set.of(
          "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "cICP", "sBIT",
          "bKGD", "pHYs");

  private final Bytes file;
  private final List<Parts.Part> parts = new ArrayList<>();
  private Optional<Bytes> exif = Optional.empty();
  private Optional<byte[]> profile = Optional.empty();

  private PngParts(Bytes file) {
    this.file = file;
  }

  static Parts of(Bytes file) throws Unusable.Found {
    return new PngParts(file).read();
  }

  private Parts read() throws Unusable.Found {
    parts.add(new Parts.Part("signature", 0, SIGNATURE, true));
    int at = SIGNATURE;
    String name = "";
    while (!name.equals("IEND")) {
      if (!file.has(at, AROUND) || !file.has(at, AROUND + file.u32(at))) {
        throw Unusable.truncated();
      }
      int length = (int) file.u32(at);
      name = file.text(at + 4, 4);
      if (at == SIGNATURE && !(name.equals("IHDR") && length == 13)) {
        throw Unusable.unreadable("The PNG does not begin with how large it is.");
      }
      parts.add(new Parts.Part(name, at, at + AROUND + length, NEEDED.contains(name)));
      look(name, at + 8, length);
      at += AROUND + length;
    }
    long width = file.u32(SIGNATURE + 8);
    long height = file.u32(SIGNATURE + 12);
    if (width < 1 || height < 1 || width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
      throw Unusable.unreadable("The PNG does not say how large it is.");
    }
    return new Parts(PictureFormat.PNG, (int) width, (int) height, parts, exif, profile);
  }

  private void look(String name, int at, int length) {
    if (name.equals("eXIf") && exif.isEmpty() && length <= LARGEST_EXIF) {
      exif = Optional.of(file.part(at, length));
    }
    if (name.equals("iCCP") && profile.isEmpty()) {
      profile = profile(at, length);
    }
  }

  /** Unpacked within a bound; without one a small chunk could fill the memory. */
  private Optional<byte[]> profile(int at, int length) {
    int name = 0;
    while (name < length && file.u8(at + name) != 0) {
      name++;
    }
    int packed = name + 2;
    if (packed >= length) {
      return Optional.empty();
    }
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(file.slice(at + packed, length - packed));
      byte[] head = new byte[4];
      if (inflater.inflate(head) < 4) {
        return Optional.empty();
      }
      long size = new Bytes(ByteBuffer.wrap(head)).u32(0);
      if (size < 128 || size > LARGEST_PROFILE) {
        return Optional.empty();
      }
      byte[] whole = Arrays.copyOf(head, (int) size);
      int done = 4;
      while (done < size) {
        int more = inflater.inflate(whole, done, (int) size - done);
        if (more == 0) {
          return Optional.empty();
        }
        done += more;
      }
      return Optional.of(whole);
    } catch (DataFormatException e) {
      return Optional.empty();
    } finally {
      inflater.end();
    }
  }
}
