package lampwright.tasks;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;

/**
 * What somebody did, as the audit trail tells it.
 *
 * @param number later ones have greater numbers
 * @param by who; empty for the server itself, and for somebody outside
 * @param action see {@link lampwright.people.AuditAction}; a later version may know more of them
 * @param kind see {@link lampwright.people.AuditKind}; the same
 * @param subject the id of what it was done to
 * @param subjectName what that was called then, or whose setup it belongs to; may be empty
 * @param detail a few small facts
 */
public record Audited(
    long number,
    Instant at,
    Optional<Who> by,
    String action,
    String kind,
    String subject,
    String subjectName,
    Map<String, Object> detail) {

  /** A person, and what they are called now. */
  public record Who(PersonId id, String name) {}

  public Audited {
    detail = Map.copyOf(detail);
  }
}
