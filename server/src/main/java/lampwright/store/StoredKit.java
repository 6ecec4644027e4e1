package lampwright.store;

import java.time.Instant;
import lampwright.gear.KitId;
import lampwright.people.PersonId;

/**
 * A kit as it is now.
 *
 * @param document JSON
 */
public record StoredKit(
    KitId id, int revision, String document, String name, Instant changedAt, PersonId changedBy) {}
