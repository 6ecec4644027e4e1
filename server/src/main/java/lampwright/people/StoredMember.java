package lampwright.people;

import java.time.Instant;

/**
 * A member as kept.
 *
 * @param revision of their role
 * @param since when they came
 */
public record StoredMember(Member member, int revision, Instant since) {}
