package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import lampwright.setup.notes.NoteId;

/**
 * A note as it is now.
 *
 * @param document JSON
 */
public record StoredNote(
    NoteId id,
    int revision,
    String document,
    Instant createdAt,
    PersonId createdBy,
    Instant changedAt) {}
