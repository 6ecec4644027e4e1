package lampwright.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** A file's bytes by their place, big-endian unless told. Reading beyond the end is a fault. */
final class Bytes {

  private final ByteBuffer buffer;

  /**
   * @param buffer its bytes from 0 to its limit; its position does not matter and stays
   */
  Bytes(ByteBuffer buffer) {
    this(buffer, ByteOrder.BIG_ENDIAN);
  }

  private Bytes(ByteBuffer buffer, ByteOrder order) {
    this.buffer = buffer.duplicate().order(order);
  }

  /** The same bytes, read with the lowest byte first. */
  Bytes littleEndian() {
    return new Bytes(buffer, ByteOrder.LITTLE_ENDIAN);
  }

  int size() {
    return buffer.limit();
  }

  int u8(int at) {
    return buffer.get(at) & 0xff;
  }

  int u16(int at) {
    return buffer.getShort(at) & 0xffff;
  }

  long u32(int at) {
    return buffer.getInt(at) & 0xffffffffL;
  }

  int s32(int at) {
    return buffer.getInt(at);
  }

  /** Whether so many bytes are there. */
  boolean has(long at, long count) {
    return at >= 0 && count >= 0 && at + count <= size();
  }

  boolean startsWith(int at, int... wanted) {
    if (!has(at, wanted.length)) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if (u8(at + i) != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  boolean startsWith(int at, String wanted) {
    return startsWith(at, wanted.chars().toArray());
  }

  String text(int at, int count) {
    return new String(copy(at, count), StandardCharsets.ISO_8859_1);
  }

  byte[] copy(int at, int count) {
    byte[] copy = new byte[count];
    buffer.get(at, copy);
    return copy;
  }

  /** Part of them, without a copy. */
  ByteBuffer slice(int at, int count) {
    return buffer.slice(at, count);
  }

  Bytes part(int at, int count) {
    return new Bytes(buffer.slice(at, count));
  }
}
