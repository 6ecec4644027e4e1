package lampwright.planted.gear;

/** Something for others to reach. */
public record Public(int count) {}
