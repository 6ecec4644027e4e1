package lampwright.gear.stock;

import lampwright.people.Ids;

/** Names one piece of a studio's gear: 4 to 32 small letters and digits. */
public record GearId(String text) {

  public GearId {
    Ids.check("gear", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
