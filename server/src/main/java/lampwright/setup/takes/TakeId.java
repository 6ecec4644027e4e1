package lampwright.setup.takes;

import lampwright.people.Ids;

/** Names one take: 4 to 32 small letters and digits. */
public record TakeId(String text) {

  public TakeId {
    Ids.check("take", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
