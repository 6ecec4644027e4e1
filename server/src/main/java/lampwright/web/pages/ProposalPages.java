package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.setup.used.ProposalId;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptProposal;
import lampwright.tasks.Leave;
import lampwright.tasks.Proposing;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** Decides what the crew proposed, by the buttons of the setup's page. */
public final class ProposalPages {

  private final Door door;
  private final Proposing proposing;

  public ProposalPages(Door door, Proposing proposing) {
    this.door = door;
    this.proposing = proposing;
  }

  /** Takes it over: a form to {@code /studios/{studio}/setups/{setup}/proposals/{proposal}}. */
  public void accept(Context context) {
    proposing.accept(
        door.caller(context),
        studio(context),
        setup(context),
        proposal(context),
        SetupPages.revision(Body.form(context)));
    leadBack(context);
  }

  /** Declines it: a form to {@code …/proposals/{proposal}/withdrawal}. */
  public void decline(Context context) {
    proposing.decline(
        door.caller(context),
        studio(context),
        setup(context),
        proposal(context),
        KeptProposal.WAITING);
    leadBack(context);
  }

  /** Whoever comes to a form's own address is led to the setup. */
  public void leadBack(Context context) {
    context.redirect(
        SetupPages.setupPath(studio(context), setup(context)) + "#used", HttpStatus.SEE_OTHER);
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  private static SetupId setup(Context context) {
    return Cataloguing.id(context.pathParam("setup"));
  }

  private static ProposalId proposal(Context context) {
    return Proposing.id(context.pathParam("proposal"));
  }
}
