package lampwright.people;

/** Names one studio: 4 to 32 small letters and digits. */
public record StudioId(String text) {

  public StudioId {
    Ids.check("studio", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
