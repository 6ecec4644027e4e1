package lampwright.web.pages;

/**
 * A plain word of warning.
 *
 * @param danger what can hurt ("Wet ground and mains")
 * @param act what to do about it
 */
public record Caution(String danger, String act) {}
