package lampwright.tasks;

import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Pieces of a mapped file, one after the other. */
final class Pieces extends InputStream {

  private final Deque<ByteBuffer> left;

  Pieces(List<ByteBuffer> pieces) {
    this.left = new ArrayDeque<>(pieces);
  }

  /** How many bytes there are still. */
  long bytes() {
    return left.stream().mapToLong(ByteBuffer::remaining).sum();
  }

  /** So many bytes from one on, counted from 0. */
  Pieces part(long first, long count) {
    long skip = first;
    long keep = count;
    List<ByteBuffer> kept = new ArrayList<>();
    for (ByteBuffer piece : left) {
      int skipped = (int) Math.min(skip, piece.remaining());
      int length = (int) Math.min(keep, piece.remaining() - skipped);
      kept.add(piece.slice(piece.position() + skipped, length));
      skip -= skipped;
      keep -= length;
    }
    return new Pieces(kept);
  }

  @Override
  public int read() {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int from, int most) {
    while (!left.isEmpty() && !left.element().hasRemaining()) {
      left.remove();
    }
    if (left.isEmpty()) {
      return -1;
    }
    int count = Math.min(most, left.element().remaining());
    left.element().get(into, from, count);
    return count;
  }
}
