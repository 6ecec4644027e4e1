package lampwright.archive;

import java.io.IOException;
import java.io.InputStream;

/**
 * One file of an archive that goes out.
 *
 * @param path within the bag, such as {@code data/setups.jsonl}
 * @param sha256 of its bytes
 * @param opening opens them
 */
public record PayloadFile(String path, String sha256, long bytes, Opening opening) {

  /** Whoever opens the bytes, where they lie. */
  @FunctionalInterface
  public interface Opening {
    InputStream open() throws IOException;
  }

  /** A picture's file. */
  public static PayloadFile ofPicture(String sha256, long bytes, Opening opening) {
    return new PayloadFile(PictureFile.path(sha256), sha256, bytes, opening);
  }

  boolean isPicture() {
    return path.startsWith(Bag.PICTURES);
  }
}
