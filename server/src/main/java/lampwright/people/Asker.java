package lampwright.people;

/**
 * As whom a transaction is opened.
 *
 * @param person who asks
 * @param reach how far what they came in with reaches
 */
public record Asker(PersonId person, Reach reach) {

  /** A person who can do all that they may. */
  public static Asker whole(PersonId person) {
    return new Asker(person, Reach.WHOLE);
  }
}
