package lampwright.archive;

import java.nio.file.Path;

/**
 * One file of an archive that goes out.
 *
 * @param path within the bag, such as {@code data/setups.jsonl}
 * @param sha256 of its bytes
 * @param file where they lie
 */
public record PayloadFile(String path, String sha256, long bytes, Path file) {

  /** A picture's file. */
  public static PayloadFile ofPicture(String sha256, long bytes, Path file) {
    return new PayloadFile(PictureFile.path(sha256), sha256, bytes, file);
  }

  boolean isPicture() {
    return path.startsWith(Bag.PICTURES);
  }
}
