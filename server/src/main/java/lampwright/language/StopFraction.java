package lampwright.language;

import java.util.Arrays;
import java.util.Optional;

/** The fraction of a stop in which a person reads differences, as their meter and heads do. */
public enum StopFraction {
  TENTHS("tenths"),
  THIRDS("thirds");

  private final String key;

  StopFraction(String key) {
    this.key = key;
  }

  /** As documents and forms write it. */
  public String key() {
    return key;
  }

  public static Optional<StopFraction> find(String key) {
    return Arrays.stream(values()).filter(fraction -> fraction.key.equals(key)).findFirst();
  }
}
