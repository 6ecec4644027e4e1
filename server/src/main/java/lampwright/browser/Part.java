package lampwright.browser;

import java.util.Locale;
import java.util.Optional;

/** A part of the answer, which a page may ask for alone because drawings take their time. */
enum Part {
  STRIP,
  LIGHTS,
  PLAN,
  QUICK_PLAN,
  SIDE,
  FRONT,
  CAUTIONS,
  NEEDS,
  WORKINGS,
  /** What to change now; only where the request says what happened. */
  NOW;

  /** As requests and answers name it. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Part> find(String key) {
    for (Part part : values()) {
      if (part.key().equals(key)) {
        return Optional.of(part);
      }
    }
    return Optional.empty();
  }
}
