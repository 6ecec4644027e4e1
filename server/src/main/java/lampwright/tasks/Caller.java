package lampwright.tasks;

import lampwright.people.Person;

/**
 * Who asks.
 *
 * @param person who it is
 * @param way how we know
 */
public record Caller(Person person, Way way) {

  /** How a person comes in. */
  public enum Way {
    /** In a browser, by the cookie of a session. */
    SESSION,
    /** By a program, with a token that the person made for it. */
    TOKEN
  }
}
