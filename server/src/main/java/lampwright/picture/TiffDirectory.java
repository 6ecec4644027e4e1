package lampwright.picture;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.LongStream;

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

  /** Whether it has more tags than are looked at. */
  private final boolean isCut;

  private TiffDirectory(Bytes tiff, int entries, int count, boolean isCut) {
    this.tiff = tiff;
    this.entries = entries;
    this.count = count;
    this.isCut = isCut;
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

  /** Tags that point to directories of their own: sub-pictures, Exif, places, interoperability. */
  private static final List<Integer> TO_DIRECTORIES = List.of(0x014a, 0x8769, 0x8825, 0xa005);

  private static final int MOST_DIRECTORIES = 64;

  /**
   * Whether all values of all directories together have at most so many bytes, and there are not
   * many directories. A library that keeps a copy of each value can otherwise be asked for any
   * amount of memory, since values may lie over each other.
   */
  static boolean isBounded(Bytes bytes, long mostBytes) {
    Optional<TiffDirectory> first = first(bytes);
    Deque<TiffDirectory> left = new ArrayDeque<>();
    first.ifPresent(left::add);
    int directories = 0;
    long told = 0;
    while (!left.isEmpty()) {
      TiffDirectory directory = left.remove();
      told += directory.valueBytes();
      if (++directories > MOST_DIRECTORIES || told > mostBytes || directory.isCut) {
        return false;
      }
      directory.addFurther(left);
    }
    return true;
  }

  private long valueBytes() {
    long sum = 0;
    for (int i = 0; i < count; i++) {
      int entry = entries + i * ENTRY_BYTES;
      sum += bytes(tiff.u16(entry + 2)) * tiff.u32(entry + 4);
    }
    return sum;
  }

  private void addFurther(Deque<TiffDirectory> left) {
    for (int tag : TO_DIRECTORIES) {
      for (long place : places(tag)) {
        left.add(at(tiff, place));
      }
    }
    long after = (long) entries + (long) count * ENTRY_BYTES;
    if (count > 0 && tiff.has(after, 4) && tiff.u32((int) after) != 0) {
      left.add(at(tiff, tiff.u32((int) after)));
    }
  }

  private List<Long> places(int tag) {
    return value(tag)
        .filter(value -> value.type() == 4 || value.type() == 13)
        .map(
            value ->
                LongStream.range(0, Math.min(value.count(), MOST_DIRECTORIES + 1))
                    .mapToObj(i -> tiff.u32(value.place() + 4 * (int) i))
                    .toList())
        .orElse(List.of());
  }

  private static TiffDirectory at(Bytes tiff, long place) {
    if (place < 8 || !tiff.has(place, 2)) {
      return new TiffDirectory(tiff, 0, 0, false);
    }
    int start = (int) place + 2;
    int told = tiff.u16((int) place);
    int looked = Math.min(told, MOST_ENTRIES);
    return new TiffDirectory(
        tiff, start, Math.min(looked, (tiff.size() - start) / ENTRY_BYTES), told > looked);
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
