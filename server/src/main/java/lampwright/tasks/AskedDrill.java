package lampwright.tasks;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import lampwright.learning.drill.Drill;

/**
 * A drill that a member is asked.
 *
 * @param setup that it was made from, as it is now
 * @param seed that makes the same drill again, as long as setup and kits stay as they are
 */
public record AskedDrill(Drill drill, Catalogued setup, int seed) {

  private static final int HEX_DIGITS = 12;

  /** What the same question has and another has not: an answer names the question it is to. */
  public String fingerprint() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(drill.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, HEX_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }
}
