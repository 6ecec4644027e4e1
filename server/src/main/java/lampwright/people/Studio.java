package lampwright.people;

import java.time.Instant;

/**
 * A studio.
 *
 * @param revision goes on with each change of its name
 */
public record Studio(StudioId id, String name, int revision, Instant createdAt) {}
