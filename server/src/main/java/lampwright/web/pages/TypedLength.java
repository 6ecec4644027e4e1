package lampwright.web.pages;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.language.LengthUnit;

/**
 * A length as somebody types it into a form: "2.4", "2,4 m", "7′ 10″", "7' 10", "7.5 ft", "10 in".
 * A bare number is in the person's own unit. The editor's script reads the same.
 */
final class TypedLength {

  private static final double INCHES_A_FOOT = 12;
  private static final String NUMBER = "(\\d{1,6}(?:\\.\\d{1,9})?)";
  private static final Pattern BARE = Pattern.compile(NUMBER + "\\s*(m?)");
  private static final Pattern FEET =
      Pattern.compile(NUMBER + "\\s*(?:'|ft)\\s*(?:" + NUMBER + "\\s*(?:\"|in)?)?");
  private static final Pattern INCHES = Pattern.compile(NUMBER + "\\s*(?:\"|in)");

  private TypedLength() {}

  /** In metres; empty for what is no length. */
  static Optional<Double> readMetres(String typed, LengthUnit unit) {
    String plain =
        typed
            .strip()
            .toLowerCase(Locale.ROOT)
            .replace('−', '-')
            .replace(',', '.')
            .replaceAll("''|[”“″]", "\"")
            .replaceAll("[’′]", "'");
    int sign = plain.startsWith("-") ? -1 : 1;
    return size(plain.replaceFirst("^[-+]\\s*", ""), unit).map(metres -> sign * metres);
  }

  private static Optional<Double> size(String size, LengthUnit unit) {
    Matcher bare = BARE.matcher(size);
    if (bare.matches()) {
      double inUnit = Double.parseDouble(bare.group(1));
      return Optional.of(bare.group(2).isEmpty() ? inUnit * unit.metres() : inUnit);
    }
    Matcher feet = FEET.matcher(size);
    if (feet.matches()) {
      double inches = Optional.ofNullable(feet.group(2)).map(Double::parseDouble).orElse(0.0);
      return Optional.of(inFeet(Double.parseDouble(feet.group(1)) + inches / INCHES_A_FOOT));
    }
    Matcher inches = INCHES.matcher(size);
    return inches.matches()
        ? Optional.of(inFeet(Double.parseDouble(inches.group(1)) / INCHES_A_FOOT))
        : Optional.empty();
  }

  private static double inFeet(double feet) {
    return feet * LengthUnit.FEET.metres();
  }
}
