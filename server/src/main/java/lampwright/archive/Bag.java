package lampwright.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * The files that make a bag (RFC 8493): the payload under {@code data/}, a manifest of its
 * checksums, and what is said about it.
 */
final class Bag {

  static final String PAYLOAD = "data/";
  static final String PICTURES = PAYLOAD + "pictures/";
  static final String SUMMARY = PAYLOAD + "archive.json";
  static final String DECLARATION = "bagit.txt";
  static final String INFO = "bag-info.txt";
  static final String MANIFEST = "manifest-sha256.txt";
  static final String TAG_MANIFEST = "tagmanifest-sha256.txt";

  /** The whole text of the declaration, RFC 8493 section 2.1.1. */
  static final String DECLARED = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

  private Bag() {}

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
