package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import lampwright.place.LocationId;

/**
 * A location as it is now.
 *
 * @param document JSON
 */
public record StoredLocation(
    LocationId id,
    int revision,
    String document,
    String name,
    Instant changedAt,
    PersonId changedBy) {}
