package lampwright.people;

import java.time.Instant;

/** A studio as kept. */
public record StoredStudio(StudioId id, String name, int revision, Instant createdAt) {}
