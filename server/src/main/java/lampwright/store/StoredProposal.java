package lampwright.store;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.used.ProposalId;

/**
 * A proposal as it is now.
 *
 * @param used JSON
 * @param decision absent while it waits
 */
public record StoredProposal(
    ProposalId id,
    int setupRevision,
    String used,
    Instant createdAt,
    PersonId createdBy,
    Optional<Decision> decision) {

  /**
   * What became of it.
   *
   * @param madeRevision of the setup; absent where it was declined
   */
  public record Decision(Instant at, PersonId by, Optional<Integer> madeRevision) {}
}
