package lampwright.picture;

import java.io.IOException;
import java.nio.ByteBuffer;
import javax.imageio.stream.ImageInputStreamImpl;

/** A file's bytes as the picture libraries read them. */
final class BufferStream extends ImageInputStreamImpl {

  private final ByteBuffer file;

  BufferStream(ByteBuffer file) {
    this.file = file.duplicate();
  }

  @Override
  public int read() throws IOException {
    checkClosed();
    bitOffset = 0;
    if (streamPos >= file.limit()) {
      return -1;
    }
    int read = file.get((int) streamPos) & 0xff;
    streamPos++;
    return read;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    checkClosed();
    bitOffset = 0;
    int count = (int) Math.min(most, file.limit() - streamPos);
    if (count <= 0) {
      return most == 0 ? 0 : -1;
    }
    file.get((int) streamPos, into, from, count);
    streamPos += count;
    return count;
  }

  @Override
  public long length() {
    return file.limit();
  }
}
