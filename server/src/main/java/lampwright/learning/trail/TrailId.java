package lampwright.learning.trail;

import lampwright.people.Ids;

/** Names one trail: 4 to 32 small letters and digits. */
public record TrailId(String text) {

  public TrailId {
    Ids.check("trail", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
