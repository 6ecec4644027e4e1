package lampwright.web.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Instant;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.setup.SetupDocument;

/**
 * The documents of setups as they were told last. What a revision holds never changes, so one that
 * was told needs to be neither read nor written again; who may be told it is asked every time, with
 * which revision is the current one. What was not asked for longest is let go.
 */
final class ToldDocuments {

  /** Some nine thousand setups, of one byte a letter for the most part. */
  private static final long MOST_LETTERS = 64_000_000;

  private final Cache<Key, Told> told =
      Caffeine.newBuilder()
          .maximumWeight(MOST_LETTERS)
          .weigher((Key _, Told one) -> one.document().length())
          .build();

  private record Key(String studio, String setup) {}

  /**
   * A document as it was told.
   *
   * @param document JSON
   */
  record Told(int revision, Instant changedAt, String document) {

    boolean isOf(int now, Instant changed) {
      return revision == now && changedAt.equals(changed);
    }
  }

  /** What was told of a setup last, perhaps of an older revision. */
  Optional<Told> find(String studio, String setup) {
    return Optional.ofNullable(told.getIfPresent(new Key(studio, setup)));
  }

  /** Lets go of what was told of a setup. */
  void forget(String studio, String setup) {
    told.invalidate(new Key(studio, setup));
  }

  /** Writes a document, and keeps it. */
  String tell(
      String studio, String setup, int revision, Instant changedAt, SetupDocument document) {
    String json = Json.print(SetupDocument.FORM.writeObject(document));
    told.put(new Key(studio, setup), new Told(revision, changedAt, json));
    return json;
  }
}
