package lampwright.people;

import java.util.HexFormat;
import java.util.Optional;

/**
 * A {@link DeviceSecret} as it is kept.
 *
 * @param hex its bytes in hexadecimal digits, sealed or in the open
 * @param under which key of the server it is sealed under; empty where it lies open
 */
public record SealedSecret(String hex, Optional<String> under) {

  /** As servers kept it before they had a key. */
  public static SealedSecret inTheOpen(DeviceSecret secret) {
    return new SealedSecret(secret.hex(), Optional.empty());
  }

  public static SealedSecret of(byte[] bytes, Optional<String> under) {
    return new SealedSecret(HexFormat.of().formatHex(bytes), under);
  }

  public byte[] bytes() {
    return HexFormat.of().parseHex(hex);
  }

  /** No record's text may carry a secret into a log. */
  @Override
  public String toString() {
    return "SealedSecret";
  }
}
