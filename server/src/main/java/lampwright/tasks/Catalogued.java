package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.setup.Parent;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;

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
    Standing standing,
    Optional<Parent> parent,
    SetupDocument document) {}
