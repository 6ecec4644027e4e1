package lampwright.people;

import java.time.Instant;

/**
 * An invitation that nobody has used yet, without its secret.
 *
 * @param meantFor for whom, in the words of who made it
 */
public record Invitation(
    StudioId studio,
    String id,
    Role role,
    String meantFor,
    PersonId invitedBy,
    String inviterName,
    Instant createdAt,
    Instant expiresAt) {}
