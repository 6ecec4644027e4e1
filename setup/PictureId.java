package lampwright.setup;

import lampwright.people.Ids;

/** Names one picture: 4 to 32 small letters and digits. */
public record PictureId(String text) {

  public PictureId {
    Ids.check("picture", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
