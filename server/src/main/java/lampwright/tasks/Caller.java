package lampwright.tasks;

import lampwright.people.Asker;
import lampwright.people.Person;
import lampwright.people.Reach;

/**
 * Who asks.
 *
 * @param person who it is
 * @param way how we know
 * @param reach how far what they came in with reaches
 */
public record Caller(Person person, Way way, Reach reach) {

  /** As whom the caller's transactions are opened. */
  public Asker asker() {
    return new Asker(person.id(), reach);
  }

  /** How a person comes in. */
  public enum Way {
    /** In a browser, by the cookie of a session. */
    SESSION,
    /** By a program, with a token that the person made for it. */
    TOKEN
  }
}
