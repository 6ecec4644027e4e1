package lampwright.store;

import java.util.Optional;
import lampwright.meaning.Meaning;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.signature.Signature;

/**
 * A setup and whose it is, where many studios are read at once.
 *
 * @param author who made its first revision
 * @param meaning of its text or of an older revision's, where it was worked out by now
 * @param signature as it is stored; absent where none of this version of the computation is
 */
public record SetupOfStudio(
    StudioId studio,
    StoredSetup setup,
    PersonId author,
    Optional<Meaning> meaning,
    Optional<Signature> signature) {}
