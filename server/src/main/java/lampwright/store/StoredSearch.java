package lampwright.store;

import java.time.Instant;

/**
 * A search that a member keeps.
 *
 * @param question as it stands in an address, without the question mark
 * @param seenAt when they last looked at what it finds
 */
public record StoredSearch(
    String id,
    int revision,
    String name,
    String question,
    Instant createdAt,
    Instant changedAt,
    Instant seenAt) {}
