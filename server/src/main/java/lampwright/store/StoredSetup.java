package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;

/**
 * A setup as it is now.
 *
 * @param document JSON
 */
public record StoredSetup(
    SetupId id,
    int revision,
    String document,
    String title,
    Instant changedAt,
    PersonId changedBy,
    Standing standing) {}
