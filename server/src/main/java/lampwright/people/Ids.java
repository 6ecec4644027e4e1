package lampwright.people;

import java.security.SecureRandom;
import java.util.Base64;

/** Makes the ids and the secrets of this server, from the randomness that is handed in. */
public final class Ids {

  /** Small letters and digits without i, l, o and u, which are misread or spell words. */
  private static final String ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";

  private static final int LENGTH = 16;
  private static final int SHORTEST = 4;
  private static final int LONGEST = 32;
  private static final int SECRET_BYTES = 32;

  private final SecureRandom random;

  public Ids(SecureRandom random) {
    this.random = random;
  }

  /** A new id: 16 characters, 80 bits, short enough to be read out and not to be guessed. */
  public String next() {
    StringBuilder id = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      id.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return id.toString();
  }

  /** A new secret of 256 bits for a session, a token or a link, as text that a URL may hold. */
  public String nextSecret() {
    byte[] bytes = new byte[SECRET_BYTES];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The key of 160 bits that a device makes codes from, as RFC 4226 recommends (section 4). */
  public DeviceSecret nextDeviceSecret() {
    byte[] bytes = new byte[DeviceSecret.BYTES];
    random.nextBytes(bytes);
    return DeviceSecret.of(bytes);
  }

  /** A new recovery code: 24 characters, 120 bits, in groups of four as one copies them. */
  public RecoveryCode nextRecoveryCode() {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < RecoveryCode.LENGTH; i++) {
      code.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return new RecoveryCode(code.toString());
  }

  /** Whether a text could be an id; what a stranger wrote into a URL often cannot. */
  public static boolean isId(String text) {
    return text.length() >= SHORTEST
        && text.length() <= LONGEST
        && text.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'));
  }

  /**
   * Lets an id pass.
   *
   * @throws IllegalArgumentException when the text is none
   */
  public static void check(String what, String text) {
    if (!isId(text)) {
      throw new IllegalArgumentException(
          "The id of a %s must be %d to %d small letters and digits."
              .formatted(what, SHORTEST, LONGEST));
    }
  }
}
