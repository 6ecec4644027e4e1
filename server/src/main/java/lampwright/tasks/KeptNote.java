package lampwright.tasks;

import java.time.Instant;
import lampwright.setup.notes.Note;
import lampwright.setup.notes.NoteId;

/**
 * A note beside a setup as it is now.
 *
 * @param by the name of who wrote it
 * @param at when
 * @param changedAt when it was changed last; when it was written, where it never was
 * @param isChangeable whether the caller may change and delete it
 */
public record KeptNote(
    NoteId id,
    int revision,
    String by,
    Instant at,
    Instant changedAt,
    boolean isChangeable,
    Note document) {}
