package lampwright.web.pages;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as an answer is typed: also in thirds, "1⅓", "−⅔", "1 1/3". */
final class DrillNumber {

  private static final Pattern IN_THIRDS =
      Pattern.compile("([-−+]?)\\s*(\\d{0,3})\\s*(?:(⅓|⅔)|\\b([12])/3)");

  private DrillNumber() {}

  /** Empty for what is no number. */
  static Optional<Double> read(String typed) {
    Matcher thirds = IN_THIRDS.matcher(typed.strip());
    if (!thirds.matches()) {
      return TypedNumber.read(typed);
    }
    double whole = thirds.group(2).isEmpty() ? 0 : Integer.parseInt(thirds.group(2));
    boolean isTwo = "⅔".equals(thirds.group(3)) || "2".equals(thirds.group(4));
    double size = whole + (isTwo ? 2 : 1) / 3.0;
    boolean isMinus = thirds.group(1).equals("-") || thirds.group(1).equals("−");
    return Optional.of(isMinus ? -size : size);
  }
}
