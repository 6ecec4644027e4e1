package lampwright.store;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;

/**
 * What a member answered to a drill.
 *
 * @param kind the word of the drill's kind
 * @param answer as it was given
 * @param slip the key of what was said of a wrong one
 */
public record StoredDrillAnswer(
    PersonId person,
    String kind,
    SetupId setup,
    int setupRevision,
    long seed,
    String answer,
    boolean isRight,
    Optional<String> slip,
    Instant at) {}
