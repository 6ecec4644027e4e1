package lampwright.store;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.PersonId;

/**
 * One line of the audit trail.
 *
 * @param number later ones have greater numbers
 * @param person who did it; empty for the server, and for somebody outside
 * @param personName what they are called now; empty where nobody knows any more
 * @param action see {@link lampwright.people.AuditAction}
 * @param kind see {@link lampwright.people.AuditKind}
 * @param subjectName what it was done to was called then; of a member, what they are called now
 * @param detail JSON: a few small facts
 */
public record AuditEntry(
    long number,
    Instant at,
    Optional<PersonId> person,
    String personName,
    String action,
    String kind,
    String subject,
    String subjectName,
    String detail) {}
