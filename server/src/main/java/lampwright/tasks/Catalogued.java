package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.setup.Parent;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;

/**
 * A setup of the catalogue as it is now.
 *
 * @param changedBy the name of who made this revision
 * @param parent what it was made from; absent for one that comes from no other
 */
public record Catalogued(
    SetupId id,
    int revision,
    Instant changedAt,
    String changedBy,
    Optional<Parent> parent,
    SetupDocument document) {}
