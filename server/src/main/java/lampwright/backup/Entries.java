package lampwright.backup;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the files in a backup are called, and the order in which they lie. */
final class Entries {

  /** The last of all: what the backup is. */
  static final String MANIFEST = "manifest.json";

  /** The one before: a line for every other file, as {@code sha256sum -c} reads it. */
  static final String CHECKSUMS = "files.sha256";

  private static final Pattern PICTURE =
      Pattern.compile("pictures/[0-9a-f]{2}/[0-9a-f]{2}/([0-9a-f]{64})\\.([a-z0-9-]{1,40})");
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([A-Za-z0-9._/-]{1,200})");

  private Entries() {}

  /** A file of a picture: the hash that it lies under, and which of its versions it is. */
  record PictureVersion(String sha256, String name) {}

  /** A line of {@link #CHECKSUMS}. */
  record Checksum(String sha256, String entry) {

    String line() {
      return sha256 + "  " + entry + "\n";
    }
  }

  static String rows(String table) {
    return "rows/" + table + ".copy";
  }

  static String picture(PictureVersion version) {
    String sha256 = version.sha256();
    return "pictures/%s/%s/%s.%s"
        .formatted(sha256.substring(0, 2), sha256.substring(2, 4), sha256, version.name());
  }

  static Optional<PictureVersion> findPicture(String entry) {
    Matcher matcher = PICTURE.matcher(entry);
    return matcher.matches()
        ? Optional.of(new PictureVersion(matcher.group(1), matcher.group(2)))
            .filter(version -> picture(version).equals(entry))
        : Optional.empty();
  }

  static Optional<Checksum> findChecksum(String line) {
    Matcher matcher = LINE.matcher(line);
    return matcher.matches()
        ? Optional.of(new Checksum(matcher.group(1), matcher.group(2)))
        : Optional.empty();
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }

  static String hex(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }
}
