package lampwright.people;

import java.util.Optional;

/**
 * As whom a transaction is opened.
 *
 * @param person who asks
 * @param reach how far what they came in with reaches
 * @param seen what must be read at least, by who came only to read; empty for who may change
 *     something, whose transactions are the database's own
 */
public record Asker(PersonId person, Reach reach, Optional<WritesSeen> seen) {

  /** Who may change something. */
  public Asker(PersonId person, Reach reach) {
    this(person, reach, Optional.empty());
  }

  /** A person who can do all that they may. */
  public static Asker whole(PersonId person) {
    return new Asker(person, Reach.WHOLE);
  }
}
