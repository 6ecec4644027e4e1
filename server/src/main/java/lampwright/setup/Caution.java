package lampwright.setup;

/**
 * A plain word of warning.
 *
 * @param danger what can hurt: "Wet ground and mains"; may be empty for an author's own words
 * @param act what to do about it
 */
public record Caution(String danger, String act) {}
