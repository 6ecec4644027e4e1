package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;

/**
 * One line of a history.
 *
 * @param message why it was changed, in the author's words; may be empty
 * @param deleted whether this change was a deletion
 */
public record Revision(
    int number, Instant changedAt, PersonId changedBy, String message, boolean deleted) {}
