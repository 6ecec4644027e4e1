package lampwright.tasks;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.store.Page;

/**
 * Where a page of a list ended, as addresses carry it: microseconds since 1970 and an id. It is no
 * secret; whoever makes one up only turns to another page.
 */
final class PageCursor {

  private PageCursor() {}

  static String write(Page.Place place) {
    return ChronoUnit.MICROS.between(Instant.EPOCH, place.changedAt()) + "-" + place.id();
  }

  /**
   * Reads it.
   *
   * @throws Refused Invalid at {@code /cursor} for what is none
   */
  static Optional<Page.Place> read(Optional<String> written) {
    return written.map(
        text -> {
          String[] parts = text.split("-", -1);
          if (parts.length != 2 || !parts[0].matches("\\d{1,17}") || !Ids.isId(parts[1])) {
            throw Refused.invalid(
                "/cursor", "Cursor must be one that a page gave in next. Leave it out to start.");
          }
          return new Page.Place(
              Instant.EPOCH.plus(Long.parseLong(parts[0]), ChronoUnit.MICROS), parts[1]);
        });
  }

  /** A page without its store. */
  static <T> Listed<T> listed(Page<T> page) {
    return new Listed<>(page.items(), page.next().map(PageCursor::write));
  }
}
