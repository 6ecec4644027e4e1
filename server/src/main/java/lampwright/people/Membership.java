package lampwright.people;

/** A studio that a person belongs to, and as what. */
public record Membership(StudioId studio, String studioName, Role role) {}
