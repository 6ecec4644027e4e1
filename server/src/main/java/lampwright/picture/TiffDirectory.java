package lampwright.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * One directory of a structure of TIFF (TIFF 6.0, section 2). It keeps nothing: each tag is looked
 * for when it is asked for, and what is broken is absent.
 */
final class TiffDirectory {

  private static final int ENTRY_BYTES = 12;
  private static final int MOST_ENTRIES = 1000;
  private static final int LONGEST_TEXT = 64;

  private final Bytes tiff;
  private final int entries;
  private final int count;

  private TiffDirectory(Bytes tiff, int entries, int count) {
    this.tiff = tiff;
    this.entries = entries;
    this.count = count;
  }

  /** The first directory; empty where this is no such structure. */
  static Optional<TiffDirectory> first(Bytes bytes) {
    if (!bytes.has(0, 8)) {
      return Optional.empty();
    }
    boolean little = bytes.startsWith(0, 'I', 'I');
    Bytes tiff = little ? bytes.littleEndian() : bytes;
    if ((!little && !bytes.startsWith(0, 'M', 'M')) || tiff.u16(2) != 42) {
      return Optional.empty();
    }
    return Optional.of(at(tiff, tiff.u32(4)));
  }

  private static TiffDirectory at(Bytes tiff, long place) {
    if (place < 8 || !tiff.has(place, 2)) {
      return new TiffDirectory(tiff, 0, 0);
    }
    int start = (int) place + 2;
    int told = Math.min(tiff.u16((int) place), MOST_ENTRIES);
    return new TiffDirectory(tiff, start, Math.min(told, (tiff.size() - start) / ENTRY_BYTES));
  }

  /** The directory that a tag points to; one without tags where there is none. */
  TiffDirectory directory(int tag) {
    return at(tiff, whole(tag).orElse(0));
  }

  /** The first whole number of a tag. */
  OptionalLong whole(int tag) {
    Optional<Value> value = value(tag);
    if (value.isEmpty()) {
      return OptionalLong.empty();
    }
    return switch (value.get().type()) {
      case 3 -> OptionalLong.of(tiff.u16(value.get().place()));
      case 4, 13 -> OptionalLong.of(tiff.u32(value.get().place()));
      default -> OptionalLong.empty();
    };
  }

  /** The first number of a tag that holds fractions. */
  OptionalDouble number(int tag) {
    return number(tag, 0);
  }

  /** One of the numbers of a tag that holds fractions. */
  OptionalDouble number(int tag, int index) {
    Optional<Value> found = value(tag);
    if (found.isEmpty() || index >= found.get().count()) {
      return OptionalDouble.empty();
    }
    int place = found.get().place() + 8 * index;
    return switch (found.get().type()) {
      case 5 -> fraction(tiff.u32(place), tiff.u32(place + 4));
      case 10 -> fraction(tiff.s32(place), tiff.s32(place + 4));
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble fraction(long above, long below) {
    return below == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) above / below);
  }

  /** The text of a tag, without what closes it. */
  Optional<String> text(int tag) {
    return value(tag)
        .filter(value -> value.type() == 2 && value.count() <= LONGEST_TEXT)
        .map(value -> tiff.text(value.place(), (int) value.count()))
        .map(text -> text.indexOf('\0') < 0 ? text : text.substring(0, text.indexOf('\0')))
        .map(String::strip)
        .filter(text -> !text.isEmpty());
  }

  /** Where the values of a tag are, all of them within the file. */
  private record Value(int type, long count, int place) {}

  private Optional<Value> value(int tag) {
    for (int i = 0; i < count; i++) {
      int entry = entries + i * ENTRY_BYTES;
      if (tiff.u16(entry) == tag) {
        return value(tiff.u16(entry + 2), tiff.u32(entry + 4), entry + 8);
      }
    }
    return Optional.empty();
  }

  private Optional<Value> value(int type, long values, int here) {
    long bytes = bytes(type) * values;
    long place = bytes <= 4 ? here : tiff.u32(here);
    return bytes > 0 && tiff.has(place, bytes)
        ? Optional.of(new Value(type, values, (int) place))
        : Optional.empty();
  }

  private static int bytes(int type) {
    return switch (type) {
      case 1, 2, 6, 7 -> 1;
      case 3, 8 -> 2;
      case 4, 9, 11, 13 -> 4;
      case 5, 10, 12 -> 8;
      default -> 0;
    };
  }
}
