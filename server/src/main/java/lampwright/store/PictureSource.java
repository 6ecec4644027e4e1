package lampwright.store;

import java.io.IOException;
import java.util.List;

/** The files of pictures for who reads them beside the servers that have their place open. */
@FunctionalInterface
public interface PictureSource extends AutoCloseable {

  /**
   * The files that lie under a hash, the original last.
   *
   * @throws IOException where they cannot be read
   */
  List<KeptFile> versions(String sha256) throws IOException;

  @Override
  default void close() {}
}
