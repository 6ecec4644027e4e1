package lampwright.wording;

import lampwright.engine.unit.Stops;

/**
 * How far something is off, always signed and in stops.
 *
 * @param stops the signed number ("−0.6")
 * @param word "under", "over", or empty where it is on the spot
 * @param notable whether it is off by a third of a stop or more, the least that shows
 */
public record Deviation(String stops, String word, boolean notable) {

  // Slightly less than a third, so that a third that went through binary fractions still counts.
  private static final double NOTABLE_STOPS = 1.0 / 3 - 1e-9;

  /** The deviation in the person's fraction of a stop. */
  public static Deviation of(Stops off, Wording words) {
    String signed = words.signed(off);
    String word =
        switch (signed.charAt(0)) {
          case '−' -> words.say("wording.off.under");
          case '+' -> words.say("wording.off.over");
          default -> "";
        };
    return new Deviation(signed, word, !word.isEmpty() && isNotable(off));
  }

  /** Whether it is a third of a stop or more. */
  public static boolean isNotable(Stops off) {
    return Math.abs(off.value()) >= NOTABLE_STOPS;
  }
}
