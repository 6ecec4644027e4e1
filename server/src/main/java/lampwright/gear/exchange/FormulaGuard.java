package lampwright.gear.exchange;

import java.util.regex.Pattern;

/**
 * Keeps spreadsheets from running text as a formula: text that begins like one gets an apostrophe
 * before it, by which spreadsheets know text (the remedy of OWASP's page on CSV injection). Text
 * that has apostrophes before such a beginning gets one more, so that taking one away gives back
 * what was there.
 */
final class FormulaGuard {

  private static final Pattern RISKY = Pattern.compile("(?s)'*[=+\\-@\\t\\r].*");
  private static final Pattern GUARDED = Pattern.compile("(?s)'+[=+\\-@\\t\\r].*");

  private FormulaGuard() {}

  static String guarded(String text) {
    return RISKY.matcher(text).matches() ? "'" + text : text;
  }

  static String unguarded(String cell) {
    return GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
  }
}
