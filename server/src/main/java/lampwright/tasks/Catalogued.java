package lampwright.tasks;

import java.time.Instant;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;

/**
 * A setup of the catalogue as it is now.
 *
 * @param changedBy the name of who made this revision
 */
public record Catalogued(
    SetupId id, int revision, Instant changedAt, String changedBy, SetupDocument document) {}
