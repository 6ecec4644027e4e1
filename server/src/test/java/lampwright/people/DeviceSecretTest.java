package lampwright.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;

class DeviceSecretTest {

  /** The key of RFC 6238, appendix B, for SHA-1. */
  private static final byte[] KEY = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

  /** RFC 6238, appendix B: Unix time and code of eight digits; written down from memory. */
  private static final Map<Long, String> VECTORS =
      new TreeMap<>(
          Map.of(
              59L, "94287082",
              1_111_111_109L, "07081804",
              1_111_111_111L, "14050471",
              1_234_567_890L, "89005924",
              2_000_000_000L, "69279037",
              20_000_000_000L, "65353130"));

  private static final Instant NOW = Instant.parse("2031-03-01T20:00:10Z");

  private final Ids ids = new Ids(new SecureRandom());
  private final DeviceSecret secret = ids.nextDeviceSecret();

  @Test
  void theLibrarysCodesOfEightDigitsAreThoseOfRfc6238() throws InvalidKeyException {
    TimeBasedOneTimePasswordGenerator eight =
        new TimeBasedOneTimePasswordGenerator(Duration.ofSeconds(30), 8);
    for (Map.Entry<Long, String> vector : VECTORS.entrySet()) {
      assertEquals(
          vector.getValue(),
          eight.generateOneTimePasswordString(
              new SecretKeySpec(KEY, "RAW"), Instant.ofEpochSecond(vector.getKey())));
    }
  }

  /** Fewer digits are the last ones: RFC 4226, section 5.3, takes the number modulo 10^digits. */
  @Test
  void ourCodesAreTheLastSixDigitsOfThoseOfRfc6238() {
    VECTORS.forEach(
        (seconds, code) ->
            assertEquals(
                code.substring(2), DeviceSecret.of(KEY).codeAt(Instant.ofEpochSecond(seconds))));
  }

  @Test
  void aKeyIsWrittenInBase32AsInRfc4648() {
    Map.of(
            "f",
            "MY",
            "fo",
            "MZXQ",
            "foo",
            "MZXW6",
            "foob",
            "MZXW6YQ",
            "fooba",
            "MZXW6YTB",
            "foobar",
            "MZXW6YTBOI")
        .forEach(
            (plain, written) ->
                assertEquals(
                    written,
                    DeviceSecret.of(plain.getBytes(StandardCharsets.US_ASCII)).base32(),
                    plain));
  }

  @Test
  void aDeviceBuiltFromTheStandardsShowsWhatIsAskedFor() {
    DeviceForTests device = new DeviceForTests(secret.base32());
    for (int minutes = 0; minutes < 60; minutes++) {
      Instant when = NOW.plus(Duration.ofMinutes(minutes));
      assertEquals(secret.codeAt(when), device.codeAt(when));
    }
  }

  @Test
  void aCodeIsTakenOneStepEarlyOrLateAndNeverAgain() {
    long now = NOW.getEpochSecond() / 30;
    for (long step = now - 3; step <= now + 3; step++) {
      OptionalLong found = secret.stepOf(secret.codeAt(Instant.ofEpochSecond(step * 30)), NOW, 0);
      assertEquals(Math.abs(step - now) <= 1, found.isPresent(), "step " + (step - now));
    }
    String code = secret.codeAt(NOW);
    assertEquals(OptionalLong.of(now), secret.stepOf(code, NOW, now - 1));
    assertTrue(secret.stepOf(code, NOW, now).isEmpty());
    assertTrue(secret.stepOf(code, NOW, now + 1).isEmpty());
    assertEquals(
        OptionalLong.of(now),
        secret.stepOf(code.substring(0, 3) + " " + code.substring(3), NOW, 0));
  }

  @Test
  void whatIsNoCodeIsNotTaken() {
    for (String typed : new String[] {"", "12345", "1234567", "12345a", "١٢٣٤٥٦"}) {
      assertTrue(secret.stepOf(typed, NOW, 0).isEmpty(), typed);
    }
  }

  @Test
  void theAddressHoldsWhoseSecretItIsAndNoTextDoes() {
    String address = secret.address("imke+studio@light.example");
    assertTrue(address.startsWith("otpauth://totp/Lampwright:imke%2Bstudio%40light.example?"));
    assertTrue(address.endsWith("secret=" + secret.base32() + "&issuer=Lampwright"), address);
    assertFalse(secret.toString().contains(secret.hex()));
  }

  @Test
  void aRecoveryCodeIsReadHoweverItIsTyped() {
    RecoveryCode code = ids.nextRecoveryCode();
    assertTrue(code.grouped().matches("([0-9a-hjkmnp-tv-z]{4}-){5}[0-9a-hjkmnp-tv-z]{4}"));
    assertEquals(code, RecoveryCode.typed(code.grouped()));
    assertEquals(
        code,
        RecoveryCode.typed(" " + code.grouped().toUpperCase(Locale.ROOT).replace('0', 'O') + " "));
    assertNotEquals(code, ids.nextRecoveryCode());
    assertFalse(code.toString().contains(code.text()));
  }
}
