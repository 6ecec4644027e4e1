package lampwright.tasks;

import java.io.InputStream;
import java.lang.foreign.Arena;
import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Pieces of a mapped file, one after the other; closed, it lets go of the file. */
final class Pieces extends InputStream {

  private final Deque<ByteBuffer> left;
  private final Arena arena;

  Pieces(List<ByteBuffer> pieces, Arena arena) {
    this.left = new ArrayDeque<>(pieces);
    this.arena = arena;
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

  @Override
  public void close() {
    if (arena.scope().isAlive()) {
      arena.close();
    }
  }
}
