package lampwright.people;

/** A person in a studio. */
public record Member(Person person, Role role) {}
