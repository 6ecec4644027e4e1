package lampwright.tasks;

import java.util.Set;
import lampwright.people.Person;

/**
 * Who cannot come in although they are known: the demo's members, whose password is public, where
 * the demo is off.
 *
 * @param emails theirs, in small letters
 */
public record Closed(Set<String> emails) {

  public Closed {
    emails = Set.copyOf(emails);
  }

  boolean isOpenTo(Person person) {
    return !emails.contains(person.email());
  }
}
