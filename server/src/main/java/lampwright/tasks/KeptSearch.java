package lampwright.tasks;

import java.time.Instant;
import lampwright.store.StoredSearch;

/**
 * A search that a member keeps, as it is now.
 *
 * @param seenAt when they last looked at what it finds
 */
public record KeptSearch(
    String id,
    int revision,
    Instant createdAt,
    Instant changedAt,
    Instant seenAt,
    SavedSearch document) {

  static KeptSearch of(StoredSearch stored) {
    return new KeptSearch(
        stored.id(),
        stored.revision(),
        stored.createdAt(),
        stored.changedAt(),
        stored.seenAt(),
        new SavedSearch(stored.name(), stored.question()));
  }
}
