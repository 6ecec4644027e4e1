package lampwright.setup;

import java.time.Instant;

/**
 * A setup that was made from another, as the other lists it.
 *
 * @param revision its own
 * @param parentRevision of the other, that it was made from
 */
public record Child(
    SetupId id, int revision, String title, Instant changedAt, int parentRevision) {}
