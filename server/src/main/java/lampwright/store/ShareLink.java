package lampwright.store;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;

/**
 * A link that shows one revision of a setup to somebody outside, without its secret.
 *
 * @param revision the one that was there when it was made
 * @param openedAt when somebody last followed it, to the hour; empty where nobody did
 */
public record ShareLink(
    StudioId studio,
    String id,
    SetupId setup,
    int revision,
    boolean showsPictures,
    boolean showsPlace,
    Instant createdAt,
    PersonId createdBy,
    Instant expiresAt,
    Optional<Instant> openedAt) {}
