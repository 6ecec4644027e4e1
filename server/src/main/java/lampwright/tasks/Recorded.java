package lampwright.tasks;

import java.time.Instant;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;

/**
 * What was really used of a setup, beside what was planned.
 *
 * @param current the setup's revision now; another than {@code revision} where it was changed since
 * @param revision that tells what was used
 * @param plannedRevision that was planned
 * @param changedBy the name of who told it
 * @param note may be empty
 */
public record Recorded(
    SetupId id,
    int current,
    int revision,
    int plannedRevision,
    Instant changedAt,
    String changedBy,
    String note,
    SetupDocument planned,
    SetupDocument used) {}
