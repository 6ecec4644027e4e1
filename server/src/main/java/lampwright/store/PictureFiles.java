package lampwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The bytes of one database's pictures: {@code ab/cd/<SHA-256>.<name>}, the same bytes once, in a
 * folder or in a bucket of an object store. What has a name here is complete and never changes,
 * whatever crashed. Several servers may have one place open. What an object store refuses or does
 * not answer is {@link PicturesUnavailable}, of every method.
 */
public sealed interface PictureFiles extends PictureSource permits PictureFolder, PictureBucket {

  /** The name of the file as it came; its smaller versions have names of their own. */
  String ORIGINAL = "original";

  /** What came in, on this machine, until it is kept or closed. */
  record Arrival(Path file, String sha256, long bytes) implements AutoCloseable {

    @Override
    public void close() {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Takes bytes in, piece by piece.
   *
   * @return empty where they are more than the most
   * @throws IOException where they end before their time; what has come is forgotten
   */
  Optional<Arrival> receive(InputStream in, long mostBytes) throws IOException;

  /** Keeps what came in under its hash; where the same bytes are there already, those stay. */
  default void put(Arrival arrival) {
    put(arrival, arrival.sha256(), ORIGINAL);
  }

  /**
   * Keeps what came in as a version of what lies under a hash. It is there for good when this
   * returns; what came in may be used up by it.
   */
  void put(Arrival arrival, String sha256, String name);

  /** Keeps a version of it. */
  void put(String sha256, String name, byte[] bytes);

  /**
   * Whether to put a file goes over a network and leaves what came in where it is: then it is put
   * before a transaction begins, and once more within, where it is there already.
   */
  boolean isDistant();

  /** A version of it as it is there now; empty where there is none. */
  Optional<KeptFile> find(String sha256, String name);

  /**
   * The same, as it was found a while ago where that is known: for who gives out what a row names,
   * which does not go.
   */
  Optional<KeptFile> recall(String sha256, String name);

  /** The originals that are there now of some hashes. */
  Map<String, KeptFile> originals(Set<String> hashes);

  /** Takes all its versions away, the original first: what has an original is complete. */
  void delete(String sha256);

  /**
   * What there is.
   *
   * @param hashes that there is a file of
   * @param complete those that have an original
   */
  record Listing(Set<String> hashes, Set<String> complete) {}

  /** Everything that there is. */
  Listing list();

  /** Why no file can be kept or read now, in a sentence; empty where it can. */
  Optional<String> trouble();

  /** Takes away everything that is kept, of a database that never came to be. */
  void deleteAll();

  /** Forgets what is arriving. */
  @Override
  void close();
}
