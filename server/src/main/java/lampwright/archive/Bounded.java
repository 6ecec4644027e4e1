package lampwright.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A file's bytes as long as they are as many as its entry said. */
final class Bounded extends FilterInputStream {

  private final String name;
  private final long said;
  private long read;

  Bounded(InputStream in, String name, long said) {
    super(in);
    this.name = name;
    this.said = said;
  }

  /** The file has another size than its entry said. */
  static final class Lied extends IOException {
    private static final long serialVersionUID = 1L;

    private final String name;

    private Lied(String name) {
      super("An entry lies about its size");
      this.name = name;
    }

    Unsound unsound() {
      return new Unsound(Fault.ofFile(name, "The file has another size than the ZIP says."));
    }
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    count(one < 0 ? -1 : 1);
    return one;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    int some = super.read(into, from, most);
    count(some);
    return some;
  }

  @Override
  public long skip(long count) throws IOException {
    throw new IOException("What is skipped is not counted");
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private void count(int some) throws IOException {
    if (some > 0) {
      read += some;
    }
    if (read > said || (some < 0 && read < said)) {
      throw new Lied(name);
    }
  }
}
