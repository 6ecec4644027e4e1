package lampwright.wording;

import java.util.Optional;
import java.util.Set;

/** What was likely wrong about answers, where many are told of together and not one. */
public final class SlipWords {

  /** Begins the phrase of a slip whose own has places for the one answer it was told of. */
  private static final String OF_MANY = "learning.slip.";

  private SlipWords() {}

  /**
   * The words of a slip.
   *
   * @param key of what was said; it may be one that nobody says any more
   * @return empty for a key that has no phrase now
   */
  public static Optional<String> find(String key, Wording words) {
    Set<String> keys = words.notation().phrases().keys();
    String ofMany = OF_MANY + key;
    if (keys.contains(ofMany)) {
      return Optional.of(words.say(ofMany));
    }
    return keys.contains(key) ? Optional.of(words.say(key)) : Optional.empty();
  }
}
