package lampwright.language;

import java.util.Arrays;
import java.util.Optional;

/** The unit of the tape that a person works with. */
public enum LengthUnit {
  METRES("metres", 1),
  FEET("feet", 0.3048);

  private final String key;
  private final double metres;

  LengthUnit(String key, double metres) {
    this.key = key;
    this.metres = metres;
  }

  /** As documents and forms write it. */
  public String key() {
    return key;
  }

  /** How many metres one of it is; the foot is exactly 0.3048 m (international foot, 1959). */
  public double metres() {
    return metres;
  }

  public static Optional<LengthUnit> find(String key) {
    return Arrays.stream(values()).filter(unit -> unit.key.equals(key)).findFirst();
  }
}
