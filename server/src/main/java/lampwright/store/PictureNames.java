package lampwright.store;

/**
 * How the files of pictures are called, in a folder and in a bucket: {@code ab/cd/<hash>.<name>}.
 */
final class PictureNames {

  private PictureNames() {}

  static String of(String sha256, String name) {
    if (!name.matches("[a-z0-9-]{1,40}")) {
      throw new IllegalArgumentException("No file of a picture can be called so");
    }
    return allOf(sha256) + name;
  }

  /** What the names of all files under a hash begin with. */
  static String allOf(String sha256) {
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("No picture can have this hash");
    }
    return "%s/%s/%s.".formatted(sha256.substring(0, 2), sha256.substring(2, 4), sha256);
  }

  /** The hash in the last part of a name; something else where it is no file of a picture. */
  static String hash(String lastPart) {
    return lastPart.substring(0, Math.max(0, lastPart.indexOf('.')));
  }

  /** Which version the last part of a name is. */
  static String version(String lastPart) {
    return lastPart.substring(lastPart.indexOf('.') + 1);
  }
}
