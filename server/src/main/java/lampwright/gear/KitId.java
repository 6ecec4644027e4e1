package lampwright.gear;

import lampwright.people.Ids;

/** Names one kit: 4 to 32 small letters and digits. */
public record KitId(String text) {

  public KitId {
    Ids.check("kit", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
