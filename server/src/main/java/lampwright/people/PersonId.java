package lampwright.people;

/** Names one person: 4 to 32 small letters and digits. */
public record PersonId(String text) {

  public PersonId {
    Ids.check("person", text);
  }

  @Override
  public String toString() {
    return text;
  }
}
