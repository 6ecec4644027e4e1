package lampwright.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The SHA-256 of a secret of {@link Ids#nextSecret}: what is kept of it. A quick hash will do,
 * since 256 random bits cannot be tried out; a password needs a slow one.
 *
 * @param hex 64 hexadecimal digits
 */
public record SecretHash(String hex) {

  public static SecretHash of(String secret) {
    try {
      return of(
          MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }

  public static SecretHash of(byte[] hash) {
    return new SecretHash(HexFormat.of().formatHex(hash));
  }

  public byte[] bytes() {
    return HexFormat.of().parseHex(hex);
  }

  /** Compares in a time that does not tell how much was right. */
  public boolean matches(String secret) {
    return MessageDigest.isEqual(bytes(), of(secret).bytes());
  }
}
