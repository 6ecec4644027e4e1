package lampwright.people;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.HexFormat;
import java.util.OptionalLong;
import javax.crypto.spec.SecretKeySpec;

/**
 * The secret that a person's device makes one-time codes from, by RFC 6238: six digits, SHA-1, a
 * new one each 30 seconds. That is what every device that reads an {@code otpauth} address makes
 * where nothing else is said. SHA-1 is no weakness here: HMAC does not lean on its resistance to
 * collisions (RFC 6238, section 1.2; RFC 4226, appendix B.2).
 *
 * @param hex the key's bytes in hexadecimal digits
 */
public record DeviceSecret(String hex) {

  static final int BYTES = 20;

  private static final int DIGITS = 6;
  private static final long STEP_SECONDS = 30;

  /** A code is taken one step early or late, for clocks that differ (RFC 6238, section 5.2). */
  private static final long STEPS_ASIDE = 1;

  private static final String BASE_32 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
  private static final int BITS_A_LETTER = 5;
  private static final String ISSUER = "Lampwright";

  public static DeviceSecret of(byte[] key) {
    return new DeviceSecret(HexFormat.of().formatHex(key));
  }

  public byte[] bytes() {
    return HexFormat.of().parseHex(hex);
  }

  /** The code of a moment. */
  public String codeAt(Instant when) {
    return codeOf(step(when));
  }

  /**
   * The step of 30 seconds that a code is of; empty where it is of none that is taken now.
   *
   * @param typed by the person, perhaps with gaps
   * @param lastStep that of the last code that was taken: neither it nor an earlier one is again
   */
  public OptionalLong stepOf(String typed, Instant now, long lastStep) {
    String code = typed.replaceAll("\\s", "");
    if (!code.matches("[0-9]{" + DIGITS + "}")) {
      return OptionalLong.empty();
    }
    long found = -1;
    for (long step = step(now) - STEPS_ASIDE; step <= step(now) + STEPS_ASIDE; step++) {
      if (step > lastStep && isSame(codeOf(step), code)) {
        found = step;
      }
    }
    return found < 0 ? OptionalLong.empty() : OptionalLong.of(found);
  }

  private static boolean isSame(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
  }

  private static long step(Instant when) {
    return Math.floorDiv(when.getEpochSecond(), STEP_SECONDS);
  }

  private String codeOf(long step) {
    TimeBasedOneTimePasswordGenerator codes = new TimeBasedOneTimePasswordGenerator();
    try {
      int code =
          codes.generateOneTimePassword(
              new SecretKeySpec(bytes(), codes.getAlgorithm()),
              Instant.ofEpochSecond(step * STEP_SECONDS));
      String digits = Integer.toString(code);
      return "0".repeat(DIGITS - digits.length()) + digits;
    } catch (InvalidKeyException e) {
      throw new IllegalStateException("Every key is good for HMAC.", e);
    }
  }

  /** The key in the letters that devices read, without padding (RFC 4648, section 6). */
  public String base32() {
    StringBuilder text = new StringBuilder();
    int held = 0;
    int bits = 0;
    for (byte next : bytes()) {
      held = (held << Byte.SIZE) | (next & 0xff);
      bits += Byte.SIZE;
      while (bits >= BITS_A_LETTER) {
        bits -= BITS_A_LETTER;
        text.append(BASE_32.charAt((held >> bits) & 0x1f));
      }
      held &= (1 << bits) - 1;
    }
    if (bits > 0) {
      text.append(BASE_32.charAt((held << (BITS_A_LETTER - bits)) & 0x1f));
    }
    return text.toString();
  }

  /** The address that a device takes the secret from, as a QR code or a link. */
  public String address(String email) {
    return "otpauth://totp/%s:%s?secret=%s&issuer=%s"
        .formatted(
            ISSUER,
            URLEncoder.encode(email, StandardCharsets.UTF_8).replace("+", "%20"),
            base32(),
            ISSUER);
  }

  /** No record's text may carry a secret into a log. */
  @Override
  public String toString() {
    return "DeviceSecret";
  }
}
