package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.gear.stock.GearItem;

/**
 * One line of the history of a studio's gear.
 *
 * @param changedBy the name of who made this revision
 * @param message why, in their words; may be empty
 * @param deleted whether the gear was taken away by this
 * @param document as it was then; only where one revision is asked for
 */
public record PastGear(
    int revision,
    Instant changedAt,
    String changedBy,
    String message,
    boolean deleted,
    Optional<GearItem> document) {}
