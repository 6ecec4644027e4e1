package lampwright.web.pages;

import java.util.Locale;

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

  /** The deviation in tenths of a stop. */
  public static Deviation ofTenths(double stops) {
    double tenths = Math.rint(stops * 10) / 10;
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(tenths));
    if (tenths == 0) {
      return new Deviation("0.0", "", false);
    }
    return tenths < 0
        ? new Deviation("−" + size, "under", Math.abs(stops) >= NOTABLE_STOPS)
        : new Deviation("+" + size, "over", Math.abs(stops) >= NOTABLE_STOPS);
  }
}
