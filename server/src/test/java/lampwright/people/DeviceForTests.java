package lampwright.people;

import java.io.ByteArrayOutputStream;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.Locale;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A device that has taken a secret as letters, as a stranger would build it from the standards:
 * Base32 by RFC 4648, section 6; codes by RFC 4226, section 5.3, and RFC 6238.
 */
public final class DeviceForTests {

  private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

  private final byte[] key;

  public DeviceForTests(String base32) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int held = 0;
    int bits = 0;
    for (int i = 0; i < base32.length(); i++) {
      held = (held << 5) | LETTERS.indexOf(base32.charAt(i));
      bits += 5;
      if (bits >= 8) {
        bits -= 8;
        bytes.write((held >> bits) & 0xff);
        held &= (1 << bits) - 1;
      }
    }
    key = bytes.toByteArray();
  }

  /** What it shows at a moment. */
  public String codeAt(Instant when) {
    try {
      Mac mac = Mac.getInstance("HmacSHA1");
      mac.init(new SecretKeySpec(key, "RAW"));
      byte[] counter = new byte[8];
      long step = when.getEpochSecond() / 30;
      for (int i = 7; i >= 0; i--) {
        counter[i] = (byte) step;
        step >>= 8;
      }
      byte[] hash = mac.doFinal(counter);
      int at = hash[19] & 0xf;
      int number = 0;
      for (int i = 0; i < 4; i++) {
        number = (number << 8) | (hash[at + i] & 0xff);
      }
      number &= 0x7fff_ffff;
      return String.format(Locale.ROOT, "%06d", number % 1_000_000);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
