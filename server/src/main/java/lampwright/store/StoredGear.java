package lampwright.store;

import java.time.Instant;
import lampwright.gear.stock.GearId;
import lampwright.people.PersonId;

/**
 * Gear of a studio as it is now.
 *
 * @param document JSON
 */
public record StoredGear(
    GearId id, int revision, String document, String name, Instant changedAt, PersonId changedBy) {}
