package lampwright.engine.exposure;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * An f-number: an aperture, or a meter's reading as one. Greater is a smaller opening; a reading
 * that is greater is more light.
 *
 * @param value the exact value, above 0; behind the mark f/5.6 it is 5.657
 */
public record FNumber(double value) implements Comparable<FNumber> {

  /** Checks the bound. */
  public FNumber {
    Bounds.requirePositive("f-number", value, "");
  }

  /** Returns an aperture of exactly this value. */
  public static FNumber of(double value) {
    return new FNumber(value);
  }

  /**
   * Returns the exact value behind a printed number: thirds first, then halves. A number that is on
   * no scale is taken as it stands.
   */
  public static FNumber ofMark(double printed) {
    return new FNumber(
        MarkedScale.APERTURE_THIRD
            .findPrinted(printed)
            .or(() -> MarkedScale.APERTURE_HALF.findPrinted(printed))
            .map(MarkedScale.Mark::exact)
            .orElse(printed));
  }

  /**
   * Reads "f/5.6" or "5.6" and returns the exact value behind the mark.
   *
   * @throws IllegalArgumentException where the text is no number above 0
   */
  public static FNumber parse(String text) {
    String trimmed = text.trim();
    boolean prefixed = trimmed.startsWith("f/") || trimmed.startsWith("F/");
    return ofMark(Fractions.parse(prefixed ? trimmed.substring(2) : trimmed));
  }

  /**
   * Returns the f-number that an exposure asks for, {@code N = sqrt(H S / C)}.
   *
   * @param exposure above 0
   */
  public static FNumber ofExposure(LuxSeconds exposure, Iso iso, MeterConstant constant) {
    Bounds.requirePositive("Exposure", exposure.value(), "lx·s");
    return new FNumber(Math.sqrt(exposure.value() * iso.value() / constant.luxSeconds()));
  }

  /**
   * Returns the reading of several lights together at one ISO: the root of the sum of squares,
   * because light goes with the square. Never the mean.
   *
   * @param readings what each light reads alone, at least one
   */
  public static FNumber ofTogether(List<FNumber> readings) {
    double sum = 0;
    for (FNumber reading : readings) {
      sum += reading.value * reading.value;
    }
    return new FNumber(Math.sqrt(sum));
  }

  /** Returns the exposure that this f-number stands for, {@code H = C N^2 / S}. */
  public LuxSeconds toExposure(Iso iso, MeterConstant constant) {
    return new LuxSeconds(constant.luxSeconds() * value * value / iso.value());
  }

  /** Returns the aperture value, {@code Av = log2 N^2}. */
  public double toApertureValue() {
    return 2 * BaseTwo.log(value);
  }

  /** Returns this closed by so many stops; minus opens. */
  public FNumber closedBy(Stops stops) {
    return new FNumber(value * BaseTwo.power(stops.value() / 2));
  }

  /**
   * Returns this closed by so many tenths of a stop, as meters show "5.6 and 7".
   *
   * @param tenths 0 to 9
   */
  public FNumber withTenths(int tenths) {
    Bounds.requireBetween("Tenths", tenths, "", 0, 9);
    return new FNumber(value * BaseTwo.power(tenths / 20.0));
  }

  /** Returns by how many stops this reading is more light than the other, {@code 2 log2(N/M)}. */
  public Stops stopsAbove(FNumber other) {
    return new Stops(2 * BaseTwo.log(value / other.value));
  }

  /** Returns the exact value of the nearest mark, in stops; of two the smaller opening. */
  public FNumber nearestMark(MarkedScale scale) {
    return new FNumber(scale.nearest(value).mark().exact());
  }

  /** Returns the nearest mark as printed, such as "f/5.6". */
  public String markText(MarkedScale scale) {
    return "f/" + scale.nearest(value).mark().text();
  }

  /**
   * Returns this as a meter shows it: the full-stop mark below and the tenths on top, such as
   * "f/5.6 + 0.7".
   */
  public String tenthsText() {
    int tenths = (int) Math.floor(20 * BaseTwo.log(value) + 0.5);
    int full = Math.floorDiv(tenths, 10);
    int left = tenths - 10 * full;
    return new FNumber(BaseTwo.power(full / 2.0)) + (left == 0 ? "" : " + 0." + left);
  }

  @Override
  public int compareTo(FNumber other) {
    return Double.compare(value, other.value);
  }

  /** The mark where this is one, else two decimals: "f/5.6", "f/5.93". */
  @Override
  public String toString() {
    Optional<MarkedScale.Mark> mark =
        MarkedScale.APERTURE_THIRD
            .findExact(value)
            .or(() -> MarkedScale.APERTURE_HALF.findExact(value));
    return "f/" + mark.map(MarkedScale.Mark::text).orElseGet(() -> Bounds.rounded(value, 2));
  }
}
