package lampwright.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Part of a list, newest change first.
 *
 * @param next where the next page goes on, absent on the last one
 */
public record Page<T>(List<T> items, Optional<Place> next) {

  public Page {
    items = List.copyOf(items);
  }

  /** The item that a page ended with. */
  public record Place(Instant changedAt, String id) {}
}
