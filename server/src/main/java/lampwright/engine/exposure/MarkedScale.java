package lampwright.engine.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * The series of numbers printed on lenses, shutters and cameras, and the exact powers of two behind
 * them.
 *
 * <p>A printed 5.6 stands for 5.657 and a printed 1/30 for 1/32; cameras and lenses are built to
 * the exact values, so everything is computed with those. The largest printed error is 0.14 stop
 * (f/1.2 of the third-stop series). Exact values: apertures {@code 2^(k/2)}, {@code 2^(k/4)} and
 * {@code 2^(k/6)}; times {@code 2^(5-k)} and {@code 2^(5-k/3)} from 30 s; ISO {@code 100 2^(k/3)}.
 * Printed series: source trade-practice; half-stop marks 1.2, 3.3 and 4.8 differ between makers.
 */
public enum MarkedScale {
  /** Full-stop apertures, f/1 to f/64. */
  APERTURE_FULL(Kind.APERTURE, 0, 0.5, "1 1.4 2 2.8 4 5.6 8 11 16 22 32 45 64"),
  /** Half-stop apertures, f/1 to f/32. */
  APERTURE_HALF(
      Kind.APERTURE,
      0,
      0.25,
      "1 1.2 1.4 1.7 2 2.4 2.8 3.3 4 4.8 5.6 6.7 8 9.5 11 13 16 19 22 27 32"),
  /** Third-stop apertures, f/1 to f/64. */
  APERTURE_THIRD(
      Kind.APERTURE,
      0,
      1.0 / 6,
      "1 1.1 1.2 1.4 1.6 1.8 2 2.2 2.5 2.8 3.2 3.5 4 4.5 5 5.6 6.3 7.1 8 9 10 11 13 14 16 18 20"
          + " 22 25 29 32 36 40 45 51 57 64"),
  /** Full-stop times, 30 s to 1/8000 s. */
  SHUTTER_FULL(
      Kind.SHUTTER,
      5,
      -1,
      "30 15 8 4 2 1 1/2 1/4 1/8 1/15 1/30 1/60 1/125 1/250 1/500 1/1000 1/2000 1/4000 1/8000"),
  /** Third-stop times, 30 s to 1/8000 s. */
  SHUTTER_THIRD(
      Kind.SHUTTER,
      5,
      -1.0 / 3,
      "30 25 20 15 13 10 8 6 5 4 3.2 2.5 2 1.6 1.3 1 0.8 0.6 1/2 0.4 0.3 1/4 1/5 1/6 1/8 1/10"
          + " 1/13 1/15 1/20 1/25 1/30 1/40 1/50 1/60 1/80 1/100 1/125 1/160 1/200 1/250 1/320"
          + " 1/400 1/500 1/640 1/800 1/1000 1/1250 1/1600 1/2000 1/2500 1/3200 1/4000 1/5000"
          + " 1/6400 1/8000"),
  /** Third-stop film speeds, ISO 25 to 12800. */
  ISO_THIRD(
      Kind.ISO,
      -2,
      1.0 / 3,
      "25 32 40 50 64 80 100 125 160 200 250 320 400 500 640 800 1000 1250 1600 2000 2500 3200"
          + " 4000 5000 6400 8000 10000 12800");

  /** Differences below this, in stops, are rounding of doubles and not real. */
  private static final double ROUNDING = 1e-9;

  private final Kind kind;

  @SuppressWarnings(
      "ImmutableEnumChecker") // List.copyOf of records: immutable, but no type says so
  private final List<Mark> marks;

  MarkedScale(Kind kind, double firstExponent, double step, String printed) {
    this.kind = kind;
    List<Mark> made = new ArrayList<>();
    int start = 0;
    for (int k = 0; start < printed.length(); k++) {
      int space = printed.indexOf(' ', start);
      int end = space < 0 ? printed.length() : space;
      String text = printed.substring(start, end);
      // k / (1 / step), not k * step: thirds and sixths then meet the full stops exactly.
      double exponent = firstExponent + k / (1 / step);
      double unit = kind == Kind.ISO ? 100 : 1;
      made.add(new Mark(text, Fractions.parse(text), unit * BaseTwo.power(exponent)));
      start = end + 1;
    }
    this.marks = List.copyOf(made);
  }

  /**
   * A printed number.
   *
   * @param text as printed, such as "5.6" or "1/125"
   * @param printed the printed number taken literally
   * @param exact the value that it stands for: f-number, seconds or ISO
   */
  public record Mark(String text, double printed, double exact) {}

  /**
   * The mark nearest to a value.
   *
   * @param mark the mark
   * @param gain how much more light the mark lets in than the value would, in stops
   * @param tie whether another mark is just as near, so that the one with less exposure was taken
   */
  public record Nearest(Mark mark, Stops gain, boolean tie) {}

  /** Returns all marks in the order they are printed. */
  public List<Mark> marks() {
    return marks;
  }

  /** Returns the mark with exactly this text, such as "1/125". */
  public Optional<Mark> findMark(String text) {
    return marks.stream().filter(mark -> mark.text().equals(text)).findFirst();
  }

  /** Returns the mark with this printed number, such as 5.6 or 0.008. */
  public Optional<Mark> findPrinted(double printed) {
    return marks.stream()
        .filter(mark -> Math.abs(printed - mark.printed()) <= 1e-9 * mark.printed())
        .findFirst();
  }

  /** Returns the mark that stands for this exact value, as near as doubles can tell. */
  public Optional<Mark> findExact(double exact) {
    if (!(exact > 0)) {
      return Optional.empty();
    }
    return marks.stream().filter(mark -> distance(mark, exact) <= ROUNDING).findFirst();
  }

  /**
   * Returns the mark nearest in stops, not in numbers. Of two equally near marks the one with less
   * exposure is taken (smaller aperture, shorter time, lower ISO). Beyond the series' ends it is
   * the last mark, however far.
   *
   * @param value f-number, seconds or ISO, above 0
   */
  public Nearest nearest(double value) {
    Bounds.requirePositive("Value", value, "");
    Mark best = marks.get(0);
    boolean tie = false;
    for (Mark mark : marks.subList(1, marks.size())) {
      double closer = distance(best, value) - distance(mark, value);
      if (Math.abs(closer) <= ROUNDING) {
        tie = true;
        best = light(mark.exact()) < light(best.exact()) ? mark : best;
      } else if (closer > 0) {
        tie = false;
        best = mark;
      }
    }
    return new Nearest(best, new Stops(light(best.exact()) - light(value)), tie);
  }

  /** Returns the marks from one value to another, both included where they are marks. */
  public List<Mark> marksBetween(double lowest, double highest) {
    Bounds.requirePositive("Lowest", lowest, "");
    Bounds.requirePositive("Highest", highest, "");
    double low = BaseTwo.log(lowest) - ROUNDING;
    double high = BaseTwo.log(highest) + ROUNDING;
    return marks.stream()
        .filter(mark -> BaseTwo.log(mark.exact()) >= low && BaseTwo.log(mark.exact()) <= high)
        .toList();
  }

  /**
   * Returns the error of the printed number: plus where the number, taken literally, would give
   * more light than the exact value.
   */
  public Stops printedError(Mark mark) {
    return new Stops(light(mark.printed()) - light(mark.exact()));
  }

  /** Stops of light that a setting lets in, from an arbitrary zero. */
  private double light(double setting) {
    return kind == Kind.APERTURE ? -2 * BaseTwo.log(setting) : BaseTwo.log(setting);
  }

  /** Distance in log2 space, never negative. */
  private static double distance(Mark mark, double value) {
    return Math.abs(BaseTwo.log(value / mark.exact()));
  }

  private enum Kind {
    APERTURE,
    SHUTTER,
    ISO
  }
}
