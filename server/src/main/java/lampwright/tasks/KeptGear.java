package lampwright.tasks;

import java.time.Instant;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;

/**
 * Gear of a studio as it is now.
 *
 * @param changedBy the name of who made this revision
 */
public record KeptGear(
    GearId id, int revision, Instant changedAt, String changedBy, GearItem document) {}
