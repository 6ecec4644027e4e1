package lampwright.language;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * How one person reads words and figures: their language's phrases, their tape's unit, their
 * meter's fraction of a stop. Whatever a page or a drawing says goes through it.
 *
 * <p>Lengths in feet are written as a tape is read, feet and whole inches: 7′ 10″. Stops in thirds
 * are rounded to the nearest third: −1⅓. Rounding is half away from zero.
 */
public record Notation(Phrases phrases, LengthUnit lengths, StopFraction stops) {

  /** From here on a long tape is read in whole metres. */
  private static final double LONG_TAPE_M = 20;

  private static final double INCHES_A_FOOT = 12;

  /** Exactly, by NIST SP 811. */
  private static final double KG_A_POUND = 0.45359237;

  public Language language() {
    return phrases.language();
  }

  /** A phrase of the person's language; see {@link Phrases#of}. */
  public String say(String key, Object... parts) {
    return phrases.of(key, parts);
  }

  /** A phrase for so many; see {@link Phrases#counted}. */
  public String count(String key, long count, Object... parts) {
    return phrases.counted(key, count, parts);
  }

  /** The number with exactly so many decimals, a true minus sign and the language's mark. */
  public String fixed(double value, int decimals) {
    String digits = Bounds.fixed(value, decimals);
    return written(isZero(digits) ? digits.replace("-", "") : digits);
  }

  /** The number with at most so many decimals, without zeros at its end. */
  public String rounded(double value, int decimals) {
    return written(Bounds.rounded(value, decimals));
  }

  /** A number that is written already ("-0.5") in the person's way: "−0,5". */
  public String written(String number) {
    return number.replace('-', '−').replace('.', language().decimalMark());
  }

  /** A length to be seen on a drawing or walked: "3.4 m", "24 m", "11′ 2″", "79′". */
  public String length(Metres length) {
    return length(length.value());
  }

  /** The same of a length with a direction, such as an ordinate on a plan: "−1.3 m". */
  public String length(double lengthM) {
    boolean isLong = Math.abs(lengthM) >= LONG_TAPE_M;
    return switch (lengths) {
      case METRES -> fixed(lengthM, isLong ? 0 : 1) + " m";
      case FEET -> isLong ? fixed(lengthM / lengths.metres(), 0) + "′" : feet(lengthM);
    };
  }

  /** A length to be set with a tape: to a centimetre or an inch, "3.42 m", "11′ 3″". */
  public String tape(Metres length) {
    return tape(length.value());
  }

  /** A mass as scales show it: "2.4 kg", and in pounds for who reads feet: "5.3 lb". */
  public String weight(double kg) {
    return switch (lengths) {
      case METRES -> fixed(kg, 1) + " kg";
      case FEET -> fixed(kg / KG_A_POUND, 1) + " lb";
    };
  }

  /** The same of a length with a direction. */
  public String tape(double lengthM) {
    return switch (lengths) {
      case METRES -> rounded(lengthM, 2) + " m";
      case FEET -> feet(lengthM);
    };
  }

  /** A length in the person's unit, as a number without it. */
  public double inUnit(double lengthM) {
    return lengthM / lengths.metres();
  }

  /** The sign of the person's unit beside a number: "m" or "ft". */
  public String lengthSign() {
    return lengths == LengthUnit.METRES ? "m" : "ft";
  }

  /** A difference in stops, always signed: "−1.3", "+0.7", "0.0"; in thirds "−1⅓", "+⅔", "0". */
  public String signed(Stops difference) {
    String size = size(Math.abs(difference.value()));
    return isZero(size) ? size : (difference.value() < 0 ? "−" : "+") + size;
  }

  /** How many stops, without a sign: "1.3", "1⅓". */
  public String size(double howManyStops) {
    return switch (stops) {
      case TENTHS -> fixed(howManyStops, 1);
      case THIRDS -> thirds(howManyStops);
    };
  }

  private static String thirds(double value) {
    long thirds = StrictMath.round(value * 3);
    long whole = thirds / 3;
    String fraction =
        switch ((int) (thirds % 3)) {
          case 1 -> "⅓";
          case 2 -> "⅔";
          default -> "";
        };
    return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
  }

  private static String feet(double lengthM) {
    long inches = StrictMath.round(Math.abs(lengthM) / LengthUnit.FEET.metres() * INCHES_A_FOOT);
    long feet = inches / 12;
    String size = feet == 0 ? inches % 12 + "″" : feet + "′ " + inches % 12 + "″";
    return lengthM < 0 && inches > 0 ? "−" + size : size;
  }

  private static boolean isZero(String number) {
    return number.chars().allMatch(c -> "-0.,".indexOf(c) >= 0);
  }
}
