package lampwright.setup.reacting;

import java.util.Locale;
import java.util.Optional;

/** What is turned at the camera. */
public enum CameraDial {
  TIME,
  APERTURE,
  ISO,
  /** Grey filters before the lens, put on or taken off. */
  FILTER;

  /** As requests name it: "time". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The dial that a word names. */
  public static Optional<CameraDial> find(String word) {
    for (CameraDial dial : values()) {
      if (dial.word().equals(word)) {
        return Optional.of(dial);
      }
    }
    return Optional.empty();
  }
}
