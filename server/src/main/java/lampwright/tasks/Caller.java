package lampwright.tasks;

import java.util.Optional;
import lampwright.people.Asker;
import lampwright.people.Person;
import lampwright.people.Reach;
import lampwright.people.WritesSeen;

/**
 * Who asks.
 *
 * @param person who it is
 * @param way how we know
 * @param reach how far what they came in with reaches
 * @param seen what must be read at least, by who came only to read; empty where nobody looked
 */
public record Caller(Person person, Way way, Reach reach, Optional<WritesSeen> seen) {

  /** Who may change something. */
  public Caller(Person person, Way way, Reach reach) {
    this(person, way, reach, Optional.empty());
  }

  /** As whom the caller's transactions are opened. */
  public Asker asker() {
    return new Asker(person.id(), reach, seen);
  }

  /** How a person comes in. */
  public enum Way {
    /** In a browser, by the cookie of a session. */
    SESSION,
    /** By a program, with a token that the person made for it. */
    TOKEN
  }
}
