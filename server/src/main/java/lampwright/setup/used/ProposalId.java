package lampwright.setup.used;

import lampwright.people.Ids;

/** Names one proposal: 4 to 32 small letters and digits. */
public record ProposalId(String text) {

  public ProposalId {
    Ids.check("proposal", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
