package lampwright.web.http;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Proofs that a change comes from a page of ours: HMAC-SHA256 of the word csrf under the session's
 * token, so nothing need be stored. Each time it is given out under a new random mask, since a
 * compressed page that repeats it beside a visitor's words would betray it by its length (BREACH).
 */
public final class CsrfTokens {

  private static final String ALGORITHM = "HmacSHA256";
  private static final int BYTES = 32;

  private final SecureRandom random;

  public CsrfTokens(SecureRandom random) {
    this.random = random;
  }

  /** A proof for a session; each is another text, and each is good while the session lasts. */
  public String of(String sessionToken) {
    byte[] mask = new byte[BYTES];
    random.nextBytes(mask);
    byte[] both = Arrays.copyOf(mask, 2 * BYTES);
    System.arraycopy(xor(proof(sessionToken), mask), 0, both, BYTES, BYTES);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(both);
  }

  boolean isOf(String sessionToken, String sent) {
    byte[] both;
    try {
      both = Base64.getUrlDecoder().decode(sent);
    } catch (IllegalArgumentException e) {
      return false;
    }
    if (both.length != 2 * BYTES) {
      return false;
    }
    byte[] mask = Arrays.copyOf(both, BYTES);
    byte[] masked = Arrays.copyOfRange(both, BYTES, 2 * BYTES);
    return MessageDigest.isEqual(proof(sessionToken), xor(masked, mask));
  }

  private static byte[] xor(byte[] one, byte[] other) {
    byte[] result = new byte[BYTES];
    for (int i = 0; i < BYTES; i++) {
      result[i] = (byte) (one[i] ^ other[i]);
    }
    return result;
  }

  private static byte[] proof(String sessionToken) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(sessionToken.getBytes(StandardCharsets.UTF_8), ALGORITHM));
      return mac.doFinal("csrf".getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java has HmacSHA256.", e);
    }
  }
}
