package lampwright.store;

import static lampwright.schema.generated.Tables.PROPOSAL;
import static org.jooq.impl.DSL.row;

import java.util.List;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.used.ProposalId;
import org.jooq.Condition;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** What was proposed for one setup of the studio that the transaction is in. */
public final class Proposals {

  private final StudioTransaction in;
  private final SetupId setup;

  public Proposals(StudioTransaction in, SetupId setup) {
    this.in = in;
    this.setup = setup;
  }

  /**
   * Keeps a new one, by the person of the transaction.
   *
   * @param setupRevision that they had in hand
   * @param used JSON, checked before
   */
  public StoredProposal create(ProposalId id, int setupRevision, String used) {
    in.sql()
        .insertInto(PROPOSAL)
        .set(PROPOSAL.STUDIO_ID, in.studio().text())
        .set(PROPOSAL.ID, id.text())
        .set(PROPOSAL.SETUP_ID, setup.text())
        .set(PROPOSAL.SETUP_REVISION, setupRevision)
        .set(PROPOSAL.USED, JSONB.jsonb(used))
        .set(PROPOSAL.CREATED_AT, in.now())
        .set(PROPOSAL.CREATED_BY, in.person().text())
        .execute();
    return find(id).orElseThrow();
  }

  public Optional<StoredProposal> find(ProposalId id) {
    return in.sql()
        .selectFrom(PROPOSAL)
        .where(isOfSetup())
        .and(PROPOSAL.ID.eq(id.text()))
        .fetchOptional(Proposals::proposal);
  }

  /** How many wait to be decided. */
  public int countWaiting() {
    return in.sql().fetchCount(PROPOSAL, isOfSetup().and(isWaiting()));
  }

  /** Those that wait, the first told first. */
  public List<StoredProposal> listWaiting() {
    return in.sql()
        .selectFrom(PROPOSAL)
        .where(isOfSetup())
        .and(isWaiting())
        .orderBy(PROPOSAL.CREATED_AT, PROPOSAL.ID)
        .fetch(Proposals::proposal);
  }

  /** At most so many, the last told first, whatever became of them. */
  public Page<StoredProposal> list(Optional<Page.Place> after, int limit) {
    List<StoredProposal> found =
        in.sql()
            .selectFrom(PROPOSAL)
            .where(isOfSetup())
            .and(
                after
                    .<Condition>map(
                        place ->
                            row(PROPOSAL.CREATED_AT, PROPOSAL.ID)
                                .lessThan(place.changedAt(), place.id()))
                    .orElse(DSL.noCondition()))
            .orderBy(PROPOSAL.CREATED_AT.desc(), PROPOSAL.ID.desc())
            .limit(limit + 1)
            .fetch(Proposals::proposal);
    if (found.size() <= limit) {
      return new Page<>(found, Optional.empty());
    }
    StoredProposal last = found.get(limit - 1);
    return new Page<>(
        found.subList(0, limit), Optional.of(new Page.Place(last.createdAt(), last.id().text())));
  }

  /**
   * Decides it, by the person of the transaction. Of two that decide at once, one does.
   *
   * @param madeRevision of the setup; absent where it is declined
   * @return whether it waited until now
   */
  public boolean decide(ProposalId id, Optional<Integer> madeRevision) {
    return in.sql()
            .update(PROPOSAL)
            .set(PROPOSAL.DECIDED_AT, in.now())
            .set(PROPOSAL.DECIDED_BY, in.person().text())
            .set(PROPOSAL.MADE_REVISION, madeRevision.orElse(null))
            .where(isOfSetup())
            .and(PROPOSAL.ID.eq(id.text()))
            .and(isWaiting())
            .execute()
        == 1;
  }

  private static Condition isWaiting() {
    return PROPOSAL.DECIDED_AT.isNull();
  }

  private Condition isOfSetup() {
    return PROPOSAL.STUDIO_ID.eq(in.studio().text()).and(PROPOSAL.SETUP_ID.eq(setup.text()));
  }

  private static StoredProposal proposal(Record found) {
    return new StoredProposal(
        new ProposalId(found.get(PROPOSAL.ID)),
        found.get(PROPOSAL.SETUP_REVISION),
        found.get(PROPOSAL.USED).data(),
        found.get(PROPOSAL.CREATED_AT),
        new PersonId(found.get(PROPOSAL.CREATED_BY)),
        Optional.ofNullable(found.get(PROPOSAL.DECIDED_AT))
            .map(
                at ->
                    new StoredProposal.Decision(
                        at,
                        new PersonId(found.get(PROPOSAL.DECIDED_BY)),
                        Optional.ofNullable(found.get(PROPOSAL.MADE_REVISION)))));
  }
}
