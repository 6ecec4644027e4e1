package lampwright.setup;

import lampwright.people.Ids;

/** Names one setup: 4 to 32 small letters and digits. */
public record SetupId(String text) {

  public SetupId {
    Ids.check("setup", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
