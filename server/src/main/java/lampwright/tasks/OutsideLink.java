package lampwright.tasks;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import lampwright.people.FormerName;
import lampwright.people.PersonId;
import lampwright.store.ShareLink;

/**
 * A link that shows a setup to somebody outside, without its secret.
 *
 * @param revision the one that it shows
 * @param by who made it
 * @param openedAt when somebody last followed it, to the hour; empty where nobody did
 */
public record OutsideLink(
    String id,
    int revision,
    boolean showsPictures,
    boolean showsPlace,
    String by,
    Instant createdAt,
    Instant endsAt,
    Optional<Instant> openedAt) {

  static OutsideLink of(ShareLink made, Map<PersonId, String> names) {
    return new OutsideLink(
        made.id(),
        made.revision(),
        made.showsPictures(),
        made.showsPlace(),
        names.getOrDefault(made.createdBy(), FormerName.UNNAMED),
        made.createdAt(),
        made.expiresAt(),
        made.openedAt());
  }
}
