package lampwright.people;

/**
 * Somebody who can sign in.
 *
 * @param email in small letters
 * @param preferred how they have chosen to read
 */
public record Person(PersonId id, String email, String name, Preferred preferred) {

  /** No record's text may carry an address into a log. */
  @Override
  public String toString() {
    return "Person[" + id + "]";
  }
}
