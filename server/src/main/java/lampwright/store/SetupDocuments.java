package lampwright.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Objects;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;

/**
 * Documents of setups as they were read last: to read one takes longer than to fetch it, and a list
 * shows twenty. Nothing but the stored text decides what is read. What was not asked for longest is
 * let go.
 */
public final class SetupDocuments {

  /** Some two thousand setups, which take several times as much when they are read. */
  private static final long MOST_LETTERS = 12_000_000;

  private final Cache<String, SetupDocument> read =
      Caffeine.newBuilder()
          .maximumWeight(MOST_LETTERS)
          .weigher((String json, SetupDocument _) -> json.length())
          .build();

  /**
   * Reads what was checked before it was stored.
   *
   * @throws IllegalStateException where the form has changed and no migration has followed
   */
  public SetupDocument read(String json) {
    return Objects.requireNonNull(read.get(json, SetupDocuments::readAnew));
  }

  private static SetupDocument readAnew(String json) {
    return switch (SetupDocument.FORM.read(Json.parse(json))) {
      case Reading.Sound<SetupDocument>(SetupDocument document) -> document;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new IllegalStateException("Stored document is faulty: " + faulty.problems());
    };
  }
}
