package lampwright.engine.exposure;

/** Reads the numbers that people type for settings: "5.6", "1/125", "0.4". */
final class Fractions {

  private Fractions() {}

  /**
   * Returns the number.
   *
   * @throws IllegalArgumentException where the text is no number or fraction above 0
   */
  static double parse(String text) {
    String trimmed = text.trim();
    int slash = trimmed.indexOf('/');
    try {
      double number =
          slash < 0
              ? plainNumber(trimmed)
              : plainNumber(trimmed.substring(0, slash))
                  / plainNumber(trimmed.substring(slash + 1));
      if (Double.isFinite(number) && number > 0) {
        return number;
      }
    } catch (NumberFormatException unreadable) {
      // Falls through to the one message that says what may be typed.
    }
    throw new IllegalArgumentException(
        "Number (" + text + ") must be a number above 0 or a fraction. Maybe 5.6 or 1/125?");
  }

  /** Only digits and one point: Double.parseDouble alone would also take "1e3", "NaN" and "1d". */
  private static double plainNumber(String text) {
    String trimmed = text.trim();
    for (int i = 0; i < trimmed.length(); i++) {
      char sign = trimmed.charAt(i);
      if (sign != '.' && (sign < '0' || sign > '9')) {
        throw new NumberFormatException(trimmed);
      }
    }
    return Double.parseDouble(trimmed);
  }
}
