package lampwright.tasks;

import java.time.Instant;
import lampwright.learning.trail.Trail;
import lampwright.learning.trail.TrailId;

/**
 * A trail of a studio as it is now.
 *
 * @param changedBy the name of who made this revision
 */
public record KeptTrail(
    TrailId id, int revision, Instant changedAt, String changedBy, Trail document) {}
