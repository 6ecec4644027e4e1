package lampwright.meaning;

import java.util.Optional;

/** What texts that people search for mean, as far as that can be told here and now. */
public interface Meanings {

  /** Tells nothing: search goes by words alone. */
  Meanings NONE = _ -> Optional.empty();

  /** Whether nothing can be told now that will be told soon. */
  default boolean isLoading() {
    return false;
  }

  /** What a text means; empty where that cannot be told. */
  Optional<Meaning> find(String text);
}
