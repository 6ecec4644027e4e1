package lampwright.language;

import java.util.List;

/**
 * What a sentence puts into a place of its phrase: a name, a number, or words of its own. Numbers
 * stay numbers until somebody reads them, each in their own units.
 */
public sealed interface Filling {

  /** A name or an id, as its people wrote it. */
  record Text(String text) implements Filling {}

  /** What a dial or a scale shows, "f/5.6", "1/125 s": only its decimal mark follows the reader. */
  record Shown(String text) implements Filling {}

  /** A number with exactly so many decimals. */
  record Fixed(double value, int decimals) implements Filling {}

  /** A number with at most so many decimals. */
  record Rounded(double value, int decimals) implements Filling {}

  /** A length to be set with a tape, without needless decimals. */
  record Tape(double lengthM) implements Filling {}

  /** Where a reading was taken, as English says it: "at the face". */
  record Where(String where) implements Filling {}

  /** So many stops, in words and without a sign: "0.7 stop". */
  record InStops(double stops) implements Filling {}

  /** So many stops, without their word and without a sign: "0.7". */
  record Size(double stops) implements Filling {}

  /** A difference in stops, signed, in words: "+0.7 stop". */
  record Signed(double stops) implements Filling {}

  /** A length, with so many decimals where it is read in metres. */
  record Length(double lengthM, int decimals) implements Filling {}

  /** A phrase within the phrase. */
  record Inner(Said said) implements Filling {}

  /** So many stops, in words and without needless decimals: "2 stops", "0.2 stop". */
  record Briefly(double stops) implements Filling {}

  /** The same with a sign: "+2 stops", "−0.2 stop". */
  record SignedBriefly(double stops) implements Filling {}

  /** Several, the last with an "and" before it. */
  record Listed(List<Filling> parts) implements Filling {
    public Listed {
      parts = List.copyOf(parts);
    }
  }

  /** Several, with commas between them. */
  record Series(List<Filling> parts) implements Filling {
    public Series {
      parts = List.copyOf(parts);
    }
  }

  static Filling text(Object named) {
    return new Text(named.toString());
  }

  static Filling shown(Object setting) {
    return new Shown(setting.toString());
  }

  static Filling number(double value, int decimals) {
    return new Fixed(value, decimals);
  }

  static Filling stops(double stops) {
    return new InStops(stops);
  }

  static Filling length(double lengthM, int decimals) {
    return new Length(lengthM, decimals);
  }
}
