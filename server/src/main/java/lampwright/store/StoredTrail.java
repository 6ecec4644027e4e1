package lampwright.store;

import java.time.Instant;
import lampwright.learning.trail.TrailId;
import lampwright.people.PersonId;

/**
 * A trail as it is now.
 *
 * @param document JSON
 */
public record StoredTrail(
    TrailId id,
    int revision,
    String document,
    String name,
    Instant changedAt,
    PersonId changedBy) {}
