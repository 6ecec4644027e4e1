package lampwright.backup;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Says of its own faults that they are the reader's and not the writer's that stands behind it. */
final class SpoiltStream extends FilterInputStream {

  SpoiltStream(InputStream in) {
    super(in);
  }

  @Override
  public int read() throws IOException {
    try {
      return super.read();
    } catch (IOException e) {
      throw new BackupFile.Unreadable(e);
    }
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    try {
      return super.read(bytes, from, length);
    } catch (IOException e) {
      throw new BackupFile.Unreadable(e);
    }
  }
}
