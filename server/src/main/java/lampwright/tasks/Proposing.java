package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Used;
import lampwright.setup.used.Proposal;
import lampwright.setup.used.ProposalId;
import lampwright.setup.used.UsedDocument;
import lampwright.store.Database;
import lampwright.store.Page;
import lampwright.store.Proposals;
import lampwright.store.StoredProposal;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/**
 * Lets the crew tell how a setup was really made. Who may log takes proposes it; who may change
 * setups takes it over as the next revision, or declines it.
 */
public final class Proposing {

  private static final int MOST_WAITING = 50;

  private final Database database;
  private final Cataloguing cataloguing;
  private final Ids ids;

  /**
   * @param cataloguing waits for the index
   */
  public Proposing(Database database, Cataloguing cataloguing, Ids ids) {
    this.database = database;
    this.cataloguing = cataloguing;
    this.ids = ids;
  }

  /**
   * The proposal that an address names.
   *
   * @throws Refused NotFound where no proposal can have that id
   */
  public static ProposalId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new ProposalId(text);
  }

  /**
   * Proposes that the setup was made so.
   *
   * @throws Refused Invalid for a revision that the setup does not have, and for what does not fit
   *     the setup as it is now; Clash where too many wait
   */
  public KeptProposal propose(
      Caller caller, StudioId studio, SetupId setup, Proposal proposal, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          StoredSetup current = Sight.of(role).get(in, setup);
          mustFit(current, proposal);
          Proposals proposals = new Proposals(in, setup);
          return kept(
              in,
              caller,
              role,
              current,
              once.make(
                  in,
                  ids,
                  id -> create(proposals, new ProposalId(id), proposal),
                  id -> proposals.find(new ProposalId(id))));
        });
  }

  private static void mustFit(StoredSetup current, Proposal proposal) {
    if (proposal.setupRevision() > current.revision()) {
      throw Refused.invalid(
          "/setup_revision",
          "Setup revision (%d) must be one that the setup has; its last is %d."
              .formatted(proposal.setupRevision(), current.revision()));
    }
    if (UsedDocument.of(read(current), proposal.used())
        instanceof Reading.Faulty<SetupDocument> faulty) {
      throw Refused.invalid(
          faulty.problems().stream()
              .map(problem -> new Problem("/used" + problem.pointer(), problem.message()))
              .toList());
    }
  }

  private static StoredProposal create(Proposals proposals, ProposalId id, Proposal proposal) {
    if (proposals.countWaiting() >= MOST_WAITING) {
      throw new Refused(
          new Refusal.Clash(
              MOST_WAITING + " proposals wait for this setup already. An author decides them."));
    }
    return proposals.create(
        id, proposal.setupRevision(), StoredDocuments.print(Used.FORM, proposal.used()));
  }

  /** One as it is now. */
  public KeptProposal get(Caller caller, StudioId studio, SetupId setup, ProposalId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          StoredSetup current = Sight.of(role).get(in, setup);
          return kept(in, caller, role, current, stored(in, setup, id));
        });
  }

  /** At most so many, the last told first, whatever became of them. */
  public Listed<KeptProposal> list(
      Caller caller, StudioId studio, SetupId setup, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          StoredSetup current = Sight.of(role).get(in, setup);
          Page<StoredProposal> page = new Proposals(in, setup).list(after, wish.limit());
          return PageCursor.listed(
              new Page<>(
                  page.items().stream()
                      .map(stored -> kept(in, caller, role, current, stored))
                      .toList(),
                  page.next()));
        });
  }

  /**
   * What a page shows of them.
   *
   * @param waiting the first told first; none for whom they are no business
   * @param mayPropose whether the caller may tell how it was made
   */
  public record State(List<KeptProposal> waiting, boolean mayPropose) {}

  /** Those that wait, and whether the caller may propose. */
  static State state(StudioTransaction in, Caller caller, Role role, SetupId setup) {
    if (!role.may(Permission.LOG_TAKES)) {
      return new State(List.of(), false);
    }
    List<StoredProposal> waiting = new Proposals(in, setup).listWaiting();
    if (waiting.isEmpty()) {
      return new State(List.of(), true);
    }
    StoredSetup current = Sight.of(role).get(in, setup);
    return new State(
        waiting.stream().map(stored -> kept(in, caller, role, current, stored)).toList(), true);
  }

  /**
   * Makes the setup's next revision of it.
   *
   * @param basedOn the revision of the setup that was looked at
   * @throws Refused Clash where it was decided before; Stale and Invalid as {@link
   *     Recording#record}
   */
  public Recorded accept(
      Caller caller, StudioId studio, SetupId setup, ProposalId id, int basedOn) {
    Recorded recorded =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.WRITE_SETUPS);
              StoredProposal stored = stored(in, setup, id);
              mustWait(stored);
              Used used = StoredDocuments.read(Used.FORM, stored.used());
              Recorded made =
                  Recording.record(in, setup, basedOn, used, used.note().orElse(told(in, stored)));
              mustBeFirst(new Proposals(in, setup).decide(id, Optional.of(made.revision())));
              return made;
            });
    cataloguing.awaitIndex(studio, setup, recorded.revision());
    return recorded;
  }

  private static String told(StudioTransaction in, StoredProposal stored) {
    return "As told by " + Cataloguing.name(in, stored.createdBy()) + ".";
  }

  /**
   * Declines it, or takes one's own back.
   *
   * @param basedOn the proposal's own revision that was looked at
   * @throws Refused Clash where it was decided before
   */
  public void decline(Caller caller, StudioId studio, SetupId setup, ProposalId id, int basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          StoredSetup current = Sight.of(role).get(in, setup);
          KeptProposal proposal = kept(in, caller, role, current, stored(in, setup, id));
          if (proposal.revision() != basedOn) {
            throw Refused.stale(proposal.revision());
          }
          if (proposal.decision().isPresent()) {
            throw decidedBefore();
          }
          if (!proposal.mayDecline()) {
            throw Refused.notAllowed(
                "Somebody else told this; only they, authors and owners take it away.");
          }
          mustBeFirst(new Proposals(in, setup).decide(id, Optional.empty()));
          return id;
        });
  }

  private static void mustWait(StoredProposal stored) {
    if (stored.decision().isPresent()) {
      throw decidedBefore();
    }
  }

  private static void mustBeFirst(boolean decided) {
    if (!decided) {
      throw decidedBefore();
    }
  }

  private static Refused decidedBefore() {
    return new Refused(
        new Refusal.Clash("The proposal was decided already. Read the setup as it is now."));
  }

  private static StoredProposal stored(StudioTransaction in, SetupId setup, ProposalId id) {
    return new Proposals(in, setup).find(id).orElseThrow(Refused::notFound);
  }

  private static SetupDocument read(StoredSetup setup) {
    return StoredDocuments.read(SetupDocument.FORM, setup.document());
  }

  private static KeptProposal kept(
      StudioTransaction in, Caller caller, Role role, StoredSetup setup, StoredProposal stored) {
    SetupDocument planned = read(setup);
    Used used = StoredDocuments.read(Used.FORM, stored.used());
    boolean waits = stored.decision().isEmpty();
    boolean isOwn = stored.createdBy().equals(caller.person().id());
    return new KeptProposal(
        stored.id(),
        Cataloguing.name(in, stored.createdBy()),
        stored.createdAt(),
        new Proposal(stored.setupRevision(), used),
        stored
            .decision()
            .map(
                of ->
                    new KeptProposal.Decision(
                        Cataloguing.name(in, of.by()), of.at(), of.madeRevision())),
        planned,
        UsedDocument.of(planned, used) instanceof Reading.Sound<SetupDocument>(var document)
            ? Optional.of(document)
            : Optional.empty(),
        waits && (isOwn || role.may(Permission.WRITE_SETUPS)),
        waits && role.may(Permission.WRITE_SETUPS));
  }
}
