package lampwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Comparator;

/** One file of a picture, complete; it never changes. */
public interface KeptFile {

  /** The original last, the others by their names. */
  Comparator<KeptFile> ORIGINAL_LAST =
      Comparator.comparing((KeptFile file) -> file.name().equals(PictureFiles.ORIGINAL))
          .thenComparing(KeptFile::name);

  /** Which version it is, such as {@link PictureFiles#ORIGINAL}. */
  String name();

  long bytes();

  /**
   * Opens a part of it.
   *
   * @param first counted from 0
   * @param count how many bytes, all of which are there
   * @throws java.io.FileNotFoundException where it is lost
   */
  InputStream open(long first, long count) throws IOException;

  /** Opens all of it. */
  default InputStream open() throws IOException {
    return open(0, bytes());
  }

  /** All its bytes where the system keeps them, not in our memory. */
  ByteBuffer map() throws IOException;
}
