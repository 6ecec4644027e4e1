package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.setup.used.Proposal;
import lampwright.setup.used.ProposalId;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptProposal;
import lampwright.tasks.Listed;
import lampwright.tasks.Proposing;
import lampwright.tasks.Recorded;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** What the crew proposes that a setup was made like: list, propose, read, take over, decline. */
public final class ProposalApi {

  private final Door door;
  private final Cataloguing cataloguing;
  private final Proposing proposing;

  public ProposalApi(Door door, Cataloguing cataloguing, Proposing proposing) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.proposing = proposing;
  }

  private record Decision(String by, Instant at, Optional<Integer> madeRevision) {

    static Decision of(KeptProposal.Decision decision) {
      return new Decision(decision.by(), decision.at(), decision.madeRevision());
    }
  }

  private record One(
      String id,
      int revision,
      String by,
      Instant at,
      String state,
      Optional<Decision> decision,
      Map<String, Object> document) {

    static One of(KeptProposal proposal) {
      return new One(
          proposal.id().text(),
          proposal.revision(),
          proposal.by(),
          proposal.at(),
          proposal
              .decision()
              .map(of -> of.madeRevision().isPresent() ? "accepted" : "declined")
              .orElse("waiting"),
          proposal.decision().map(Decision::of),
          Proposal.FORM.writeObject(proposal.document()));
    }
  }

  private record All(List<One> items, Optional<String> next) {}

  /** What is read here. */
  static Form<Proposal> form() {
    return Proposal.FORM;
  }

  /** Part of them, the last told first. */
  public void list(Context context) {
    Listed.Wish wish = new Query(context, Set.of("cursor", "limit")).page();
    Listed<KeptProposal> page =
        proposing.list(
            door.caller(context), SetupApi.studio(context), SetupApi.setup(context), wish);
    Query.linkNext(context, page);
    context.json(new All(page.items().stream().map(One::of).toList(), page.next()));
  }

  /** Proposes that a setup was made so. */
  public void create(Context context) {
    Proposal document = Documents.read(context, Proposal.FORM);
    KeptProposal created =
        proposing.propose(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            document,
            Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptProposal proposal = current(context);
    if (!Preconditions.isKnown(context, proposal.revision())) {
      context.json(One.of(proposal));
    }
  }

  /** Makes the setup's next revision of it; based on the setup's revision. */
  public void accept(Context context) {
    int based = SetupApi.basedOn(context, door, cataloguing);
    Recorded recorded =
        proposing.accept(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            proposal(context),
            based);
    Preconditions.show(context, recorded.current());
    context.json(UsedJson.of(recorded));
  }

  /** Declines it, or takes one's own back. */
  public void decline(Context context) {
    int based = Preconditions.based(context, () -> current(context).revision());
    proposing.decline(
        door.caller(context),
        SetupApi.studio(context),
        SetupApi.setup(context),
        proposal(context),
        based);
    context.status(HttpStatus.NO_CONTENT);
  }

  private KeptProposal current(Context context) {
    return proposing.get(
        door.caller(context), SetupApi.studio(context), SetupApi.setup(context), proposal(context));
  }

  private static ProposalId proposal(Context context) {
    return Proposing.id(context.pathParam("proposal"));
  }
}
