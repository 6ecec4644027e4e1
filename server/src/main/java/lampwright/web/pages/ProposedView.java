package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.List;
import lampwright.tasks.KeptProposal;
import lampwright.wording.Wording;

/** Puts what the crew proposes on the setup page. */
final class ProposedView {

  private final String setupPath;
  private final int revision;
  private final Wording words;

  /**
   * @param revision of the setup that is looked at
   */
  ProposedView(String setupPath, int revision, Wording words) {
    this.setupPath = setupPath;
    this.revision = revision;
    this.words = words;
  }

  List<ProposedPart> parts(List<KeptProposal> waiting, String csrfToken) {
    return waiting.stream().map(proposal -> part(proposal, csrfToken)).toList();
  }

  private ProposedPart part(KeptProposal proposal, String csrfToken) {
    String path = setupPath + "/proposals/" + proposal.id();
    String note = proposal.document().used().note().orElse("");
    return new ProposedPart(
        "proposal-" + proposal.id(),
        words.say(
            "pages.proposal.told",
            new WhoWords(words).by(proposal.by()),
            new DayWords(words).day(proposal.at().atZone(ZoneOffset.UTC).toLocalDate())),
        proposal.used().map(used -> UsedView.proposed(proposal.planned(), used, note, words)),
        proposal.mayAccept() && proposal.used().isPresent() ? path : "",
        proposal.mayDecline() ? path + "/withdrawal" : "",
        words.say(proposal.mayAccept() ? "pages.proposal.decline" : "pages.proposal.takeBack"),
        csrfToken,
        revision,
        remark(proposal));
  }

  private String remark(KeptProposal proposal) {
    if (proposal.used().isEmpty()) {
      return words.say("pages.proposal.fitsNoMore");
    }
    int then = proposal.document().setupRevision();
    return then == revision ? "" : words.say("pages.proposal.older", then, revision);
  }
}
