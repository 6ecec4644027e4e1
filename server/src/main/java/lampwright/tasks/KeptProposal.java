package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.setup.SetupDocument;
import lampwright.setup.used.Proposal;
import lampwright.setup.used.ProposalId;

/**
 * What somebody tells of the day, waiting for an author or decided.
 *
 * @param by the name of who told it
 * @param decision absent while it waits
 * @param planned the setup as it is now
 * @param used the setup as it would be; absent where it does not fit the setup any more
 * @param mayDecline whether the caller may take it back or decline it
 * @param mayAccept whether the caller may make it a revision of the setup
 */
public record KeptProposal(
    ProposalId id,
    String by,
    Instant at,
    Proposal document,
    Optional<Decision> decision,
    SetupDocument planned,
    Optional<SetupDocument> used,
    boolean mayDecline,
    boolean mayAccept) {

  /**
   * What became of it.
   *
   * @param by the name of who decided
   * @param madeRevision of the setup; absent where it was declined
   */
  public record Decision(String by, Instant at, Optional<Integer> madeRevision) {}

  /** The revision of whatever waits. */
  public static final int WAITING = 1;

  /** Its own revision: 1 while it waits, 2 when it is decided. */
  public int revision() {
    return decision.isPresent() ? WAITING + 1 : WAITING;
  }
}
