package lampwright.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The directory of a ZIP, read before anything else looks at the file: how many entries there are,
 * what they are and where, so that a hostile one costs no memory and hides nothing. By the ZIP file
 * format specification, sections 4.3.12 to 4.3.16 (PKWARE, APPNOTE 6.3.10).
 */
final class ZipDirectory {

  private static final int END = 22;
  private static final int END_SIGNATURE = 0x06054b50;
  private static final int LOCATOR = 20;
  private static final int LOCATOR_SIGNATURE = 0x07064b50;
  private static final int WIDE_END = 56;
  private static final int WIDE_END_SIGNATURE = 0x06064b50;
  private static final int HEADER = 46;
  private static final int HEADER_SIGNATURE = 0x02014b50;
  private static final int LOCAL_HEADER = 30;
  private static final long IS_WIDE = 0xffff_ffffL;
  private static final int WIDE_FIELD = 1;
  private static final int ENCRYPTED = 1;
  private static final int UNIX = 3;
  private static final int KIND_OF_FILE = 0xf000;
  private static final int PLAIN_FILE = 0x8000;
  private static final int FOLDER = 0x4000;

  /** Room in the directory for an entry with a long name. */
  private static final int LARGEST_HEADER = 400;

  private final FileChannel file;
  private final Limits limits;
  private final long size;

  private ZipDirectory(FileChannel file, Limits limits, long size) {
    this.file = file;
    this.limits = limits;
    this.size = size;
  }

  /**
   * One file of a ZIP.
   *
   * @param packed bytes in the ZIP
   * @param bytes that it says it unpacks to
   * @param offset of its header
   */
  record Entry(String name, long packed, long bytes, long offset) {

    boolean isFolder() {
      return name.endsWith("/");
    }
  }

  /** Its entries, in the order of the directory. */
  static List<Entry> read(Path zip, Limits limits) throws IOException, Unsound {
    try (FileChannel file = FileChannel.open(zip, StandardOpenOption.READ)) {
      return new ZipDirectory(file, limits, file.size()).read();
    }
  }

  private List<Entry> read() throws IOException, Unsound {
    if (size < END) {
      throw wrong("The archive is no ZIP, or ended before it was complete. Send it again.");
    }
    ByteBuffer end = bytes(size - END, END);
    if (end.getInt(0) != END_SIGNATURE) {
      throw wrong("The archive is no ZIP, or ended before it was complete. Send it again.");
    }
    if (end.getInt(4) != 0 || end.getShort(20) != 0) {
      throw wrong("The ZIP is in several parts or has a comment. Pack it anew, plainly.");
    }
    Place place =
        new Place(
            Short.toUnsignedInt(end.getShort(10)),
            Integer.toUnsignedLong(end.getInt(12)),
            Integer.toUnsignedLong(end.getInt(16)),
            size - END);
    Place wide = wide(place);
    if (wide.entries > limits.entries()
        || wide.bytes > (long) limits.entries() * LARGEST_HEADER
        || (place.entries > limits.entries() && place.entries != 0xffff)) {
      throw wrong("The archive must hold at most " + limits.entries() + " files.");
    }
    if (wide.offset < 0 || wide.bytes < 0 || wide.offset + wide.bytes != wide.end) {
      throw wrong("The ZIP's directory is not where it says. Pack it anew.");
    }
    return entries(bytes(wide.offset, (int) wide.bytes), wide);
  }

  /** Where the directory lies; its end is where the record behind it begins. */
  private record Place(long entries, long bytes, long offset, long end) {}

  private Place wide(Place place) throws IOException, Unsound {
    if (size < END + LOCATOR) {
      return place;
    }
    ByteBuffer locator = bytes(size - END - LOCATOR, LOCATOR);
    if (locator.getInt(0) != LOCATOR_SIGNATURE) {
      return place;
    }
    long at = locator.getLong(8);
    if (at < 0 || at != size - END - LOCATOR - WIDE_END) {
      throw wrong("The ZIP's directory is not where it says. Pack it anew.");
    }
    ByteBuffer end = bytes(at, WIDE_END);
    if (end.getInt(0) != WIDE_END_SIGNATURE) {
      throw wrong("The ZIP's directory is not where it says. Pack it anew.");
    }
    return new Place(end.getLong(32), end.getLong(40), end.getLong(48), at);
  }

  private List<Entry> entries(ByteBuffer directory, Place place) throws Unsound {
    List<Entry> entries = new ArrayList<>();
    int at = 0;
    while (at < directory.limit()) {
      if (entries.size() >= limits.entries()) {
        throw wrong("The archive must hold at most " + limits.entries() + " files.");
      }
      if (at + HEADER > directory.limit() || directory.getInt(at) != HEADER_SIGNATURE) {
        throw wrong("The ZIP's directory is broken. Pack it anew.");
      }
      int name = Short.toUnsignedInt(directory.getShort(at + 28));
      int extra = Short.toUnsignedInt(directory.getShort(at + 30));
      int comment = Short.toUnsignedInt(directory.getShort(at + 32));
      int next = at + HEADER + name + extra + comment;
      if (next > directory.limit()) {
        throw wrong("The ZIP's directory is broken. Pack it anew.");
      }
      entries.add(entry(directory, at, name, extra));
      at = next;
    }
    if (entries.size() != place.entries) {
      throw wrong("The ZIP's directory is broken. Pack it anew.");
    }
    mustLieApart(entries, place.offset);
    return entries;
  }

  private static Entry entry(ByteBuffer directory, int at, int nameLength, int extraLength)
      throws Unsound {
    byte[] written = new byte[nameLength];
    directory.get(at + HEADER, written);
    String name = new String(written, StandardCharsets.ISO_8859_1);
    mustBePlain(directory, at, name);
    long bytes = Integer.toUnsignedLong(directory.getInt(at + 24));
    long packed = Integer.toUnsignedLong(directory.getInt(at + 20));
    long offset = Integer.toUnsignedLong(directory.getInt(at + 42));
    int extra = at + HEADER + nameLength;
    int end = extra + extraLength;
    while (extra + 4 <= end) {
      int kind = Short.toUnsignedInt(directory.getShort(extra));
      int length = Short.toUnsignedInt(directory.getShort(extra + 2));
      int field = extra + 4;
      int fieldEnd = Math.min(end, field + length);
      if (kind == WIDE_FIELD) {
        if (bytes == IS_WIDE && field + 8 <= fieldEnd) {
          bytes = directory.getLong(field);
          field += 8;
        }
        if (packed == IS_WIDE && field + 8 <= fieldEnd) {
          packed = directory.getLong(field);
          field += 8;
        }
        if (offset == IS_WIDE && field + 8 <= fieldEnd) {
          offset = directory.getLong(field);
        }
      }
      extra += 4 + length;
    }
    if (bytes < 0 || packed < 0 || offset < 0) {
      throw new Unsound(Fault.ofFile(shown(name), "The file's size cannot be."));
    }
    return new Entry(name, packed, bytes, offset);
  }

  private static void mustBePlain(ByteBuffer directory, int at, String name) throws Unsound {
    int method = Short.toUnsignedInt(directory.getShort(at + 10));
    if ((directory.getShort(at + 8) & ENCRYPTED) != 0 || (method != 0 && method != 8)) {
      throw new Unsound(
          Fault.ofFile(shown(name), "The file is encrypted or packed in an uncommon way."));
    }
    int mode = directory.getInt(at + 38) >>> 16;
    int kind = mode & KIND_OF_FILE;
    boolean isUnix = (Short.toUnsignedInt(directory.getShort(at + 4)) >>> 8) == UNIX;
    if (isUnix && kind != 0 && kind != PLAIN_FILE && kind != FOLDER) {
      throw new Unsound(
          Fault.ofFile(shown(name), "This is a link or a device. Only plain files are taken."));
    }
    if (!name.matches("[A-Za-z0-9._/-]{1,200}") || !isWithin(name)) {
      throw new Unsound(
          Fault.ofFile(shown(name), "A file of an archive must have a plain name within it."));
    }
  }

  private static boolean isWithin(String name) {
    if (name.startsWith("/")) {
      return false;
    }
    String path = name.endsWith("/") ? name.substring(0, name.length() - 1) : name;
    for (String part : path.split("/", -1)) {
      if (part.isEmpty() || part.equals(".") || part.equals("..")) {
        return false;
      }
    }
    return true;
  }

  /** Without what could disturb whoever reads the message. */
  private static String shown(String name) {
    String plain = name.replaceAll("[^A-Za-z0-9._/ -]", "?");
    return plain.length() > 100 ? plain.substring(0, 100) + "…" : plain;
  }

  /** The same packed bytes under many names would unpack to far more than was sent. */
  private static void mustLieApart(List<Entry> entries, long directory) throws Unsound {
    List<Entry> inOrder = new ArrayList<>(entries);
    inOrder.sort(Comparator.comparingLong(Entry::offset));
    for (int i = 0; i < inOrder.size(); i++) {
      Entry entry = inOrder.get(i);
      long end = i + 1 < inOrder.size() ? inOrder.get(i + 1).offset() : directory;
      if (entry.packed() > end - entry.offset() - LOCAL_HEADER) {
        throw new Unsound(
            Fault.ofFile(shown(entry.name()), "The file does not lie apart from the others."));
      }
    }
  }

  private ByteBuffer bytes(long from, int length) throws IOException, Unsound {
    if (from < 0 || from + length > size) {
      throw wrong("The ZIP's directory is not where it says. Pack it anew.");
    }
    ByteBuffer bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    while (bytes.hasRemaining()) {
      if (file.read(bytes, from + bytes.position()) < 0) {
        throw wrong("The archive ended before it was complete. Send it again.");
      }
    }
    return bytes.flip();
  }

  private static Unsound wrong(String message) {
    return new Unsound(Fault.ofArchive(message));
  }
}
