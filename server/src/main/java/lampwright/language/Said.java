package lampwright.language;

import java.util.List;
import java.util.Optional;

/**
 * A sentence that is decided but not yet in anybody's language: the key of its phrase, and the
 * parts that go into the phrase's places.
 *
 * @param count for a phrase that counts: its first place
 */
public record Said(String key, Optional<Long> count, List<Filling> parts) {

  public Said {
    parts = List.copyOf(parts);
  }

  /** A sentence with its parts in the order of the phrase's places. */
  public static Said of(String key, Filling... parts) {
    return new Said(key, Optional.empty(), List.of(parts));
  }

  /** A sentence for so many; its parts go into the places from {@code {1}} on. */
  public static Said counted(String key, long count, Filling... parts) {
    return new Said(key, Optional.of(count), List.of(parts));
  }

  /** As a part of another. */
  public Filling asFilling() {
    return new Filling.Inner(this);
  }
}
