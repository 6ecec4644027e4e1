package lampwright.tasks;

import java.time.Instant;
import lampwright.place.Location;
import lampwright.place.LocationId;

/**
 * A location of a studio as it is now.
 *
 * @param changedBy the name of who made this revision
 */
public record KeptLocation(
    LocationId id, int revision, Instant changedAt, String changedBy, Location document) {}
