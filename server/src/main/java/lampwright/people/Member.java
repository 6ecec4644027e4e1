package lampwright.people;

import java.time.Instant;

/**
 * A person in a studio.
 *
 * @param revision of their role
 * @param since when they came
 */
public record Member(Person person, Role role, int revision, Instant since) {}
