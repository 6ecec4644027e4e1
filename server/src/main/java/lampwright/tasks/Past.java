package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.setup.Standing;

/**
 * One line of a setup's history.
 *
 * @param changedBy the name of who made this revision
 * @param message why, in their words; may be empty
 * @param title that the document had
 * @param standing where the setup stood
 * @param planned the revision that was planned, where this one tells what was really used of it
 * @param restoredFrom the revision that this one brought back
 * @param deleted whether the setup was taken out of the catalogue by this
 */
public record Past(
    int revision,
    Instant changedAt,
    String changedBy,
    String message,
    String title,
    Standing standing,
    Optional<Integer> planned,
    Optional<Integer> restoredFrom,
    boolean deleted) {}
