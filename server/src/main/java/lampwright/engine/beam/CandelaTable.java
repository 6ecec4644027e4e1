package lampwright.engine.beam;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Degrees;

/**
 * Measured intensities by direction, in candela or, for a flash, candela seconds; between the
 * measured angles bilinear in angle, outside of the vertical range nothing (source lm-63).
 *
 * <p>Vertical angles run from the axis (0) to straight back (180), horizontal angles about the axis
 * from the source's own up, clockwise as seen from behind it. The last horizontal angle says which
 * way the light is the same: 0 all around, 90 in every quarter, 180 in both halves, 360 nowhere.
 *
 * <p>As a {@link Spread} it is taken as a share of its intensity on the axis (first row at 0
 * degrees). A table that is dark on the axis is taken as a share of its peak, and is then 0, not 1,
 * there: ask {@link #isDarkOnAxis} before using it where the axis must shine.
 */
public final class CandelaTable implements Spread {

  /** The most angles in either direction. */
  public static final int MOST_ANGLES = 361;

  /** The most intensities. */
  public static final int MOST_INTENSITIES = 30_000;

  /** The largest intensity; a lighthouse stays far below it. */
  public static final double LARGEST_CANDELA = 1e9;

  /** The least step between angles: less cannot be measured. */
  public static final double LEAST_STEP_DEG = 1e-4;

  /** Less than this share of the peak is no light on the axis. */
  private static final double DARK = 1e-6;

  private final List<Degrees> vertical;
  private final List<Degrees> horizontal;
  private final List<List<Double>> rows;
  private final double peakCandela;
  private final double referenceCandela;
  private final double solidAngleSr;

  private CandelaTable(
      List<Degrees> vertical, List<Degrees> horizontal, List<List<Double>> rowsCandela) {
    this.vertical = List.copyOf(vertical);
    this.horizontal = List.copyOf(horizontal);
    this.rows = rowsCandela.stream().map(List::copyOf).toList();
    double peak = 0;
    for (List<Double> row : rows) {
      for (double candela : row) {
        peak = Math.max(peak, candela);
      }
    }
    peakCandela = peak;
    double onAxis = candelaAt(0, 0);
    referenceCandela = onAxis > peak * DARK ? onAxis : peak;
    solidAngleSr = integralCandelaSr() / referenceCandela;
  }

  /**
   * Returns the table of so many intensities.
   *
   * @param vertical from the axis, 2 or more, ascending, 0 to 180 degrees
   * @param horizontal about the axis, ascending from 0 to 0, 90, 180 or 360 degrees
   * @param rowsCandela for each horizontal angle a row with an intensity for each vertical angle, 0
   *     or more, at least one above 0
   * @throws IllegalArgumentException where that does not hold; see {@link #findFault}
   */
  public static CandelaTable of(
      List<Degrees> vertical, List<Degrees> horizontal, List<List<Double>> rowsCandela) {
    Optional<Fault> fault = findFault(vertical, horizontal, rowsCandela);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get().message());
    }
    return new CandelaTable(vertical, horizontal, rowsCandela);
  }

  /** Returns the mirror image, for horizontal angles that were counted the other way round. */
  CandelaTable mirrored() {
    if (horizontal.get(horizontal.size() - 1).value() != 360) {
      return this;
    }
    List<Degrees> turned = horizontal.reversed().stream().map(new Degrees(360)::minus).toList();
    return new CandelaTable(vertical, turned, rows.reversed());
  }

  /** The part of a table that is wrong. */
  public enum Part {
    VERTICAL,
    HORIZONTAL,
    INTENSITIES
  }

  /**
   * What is wrong with a table.
   *
   * @param part where
   * @param index the angle's place; for intensities their place in reading order, row by row
   * @param message what is wrong and what to do
   */
  public record Fault(Part part, int index, String message) {}

  /** Returns the first reason why the numbers are no table; empty where they are one. */
  public static Optional<Fault> findFault(
      List<Degrees> vertical, List<Degrees> horizontal, List<List<Double>> rowsCandela) {
    return TableFaults.find(vertical, horizontal, rowsCandela);
  }

  /** Returns the vertical angles. */
  public List<Degrees> vertical() {
    return vertical;
  }

  /** Returns the horizontal angles. */
  public List<Degrees> horizontal() {
    return horizontal;
  }

  /** Returns the intensities, a row for each horizontal angle, in candela or candela seconds. */
  public List<List<Double>> rowsCandela() {
    return rows;
  }

  /** Returns the largest intensity, above 0, in candela or candela seconds. */
  public double peakCandela() {
    return peakCandela;
  }

  /** Returns the intensity that counts as 1: on the axis, or the peak where the axis is dark. */
  public double referenceCandela() {
    return referenceCandela;
  }

  /** Asks whether next to nothing shines on the axis, as with a lamp that only lights upwards. */
  public boolean isDarkOnAxis() {
    return candelaAt(0, 0) <= peakCandela * DARK;
  }

  /**
   * Returns the intensity in a direction.
   *
   * @param fromAxis 0 to 180 degrees
   * @param around any angle
   */
  public double candelaAt(Degrees fromAxis, Degrees around) {
    return candelaAt(fromAxis.value(), around.value());
  }

  @Override
  public double relativeAt(double cosine, double aroundRadians) {
    double fromAxisDeg = StrictMath.acos(Math.max(-1, Math.min(1, cosine))) * 180 / Math.PI;
    return candelaAt(fromAxisDeg, aroundRadians * 180 / Math.PI) / referenceCandela;
  }

  @Override
  public boolean isRound() {
    return horizontal.size() == 1;
  }

  /** Returns the exact integral of the interpolated intensities over the reference. */
  @Override
  public double solidAngleSr() {
    return solidAngleSr;
  }

  /**
   * Returns the flux as data sheets compute it: of each zone the mean of its two ends times its
   * solid angle, in lumens or lumen seconds.
   */
  public double zonalFluxLm() {
    double sum = 0;
    for (int v = 0; v + 1 < vertical.size(); v++) {
      double from = vertical.get(v).toRadians();
      double to = vertical.get(v + 1).toRadians();
      sum +=
          (meanAround(v) + meanAround(v + 1))
              / 2
              * (StrictMath.cos(from) - StrictMath.cos(to))
              * 2
              * Math.PI;
    }
    return sum;
  }

  /**
   * Returns the full angle between the directions, to both sides in one plane through the axis,
   * where the intensity first falls to half the reference. Empty where it never does on a side.
   *
   * @param around the plane's horizontal angle
   */
  public Optional<Degrees> findHalfPeakAngle(Degrees around) {
    double one = halfAngleDeg(around.value());
    double other = halfAngleDeg(around.value() + 180);
    return one < 0 || other < 0 ? Optional.empty() : Optional.of(new Degrees(one + other));
  }

  /** The angle from the axis where half the reference is reached, or -1. */
  private double halfAngleDeg(double aroundDeg) {
    double half = referenceCandela / 2;
    double before = candelaAt(0, aroundDeg);
    double beforeDeg = 0;
    if (before < half) {
      return -1;
    }
    for (Degrees angle : vertical) {
      double now = candelaAt(angle.value(), aroundDeg);
      if (now < half) {
        return beforeDeg + (before - half) / (before - now) * (angle.value() - beforeDeg);
      }
      before = now;
      beforeDeg = angle.value();
    }
    // Beyond the table nothing shines.
    return beforeDeg;
  }

  private double candelaAt(double fromAxisDeg, double aroundDeg) {
    int last = vertical.size() - 1;
    if (fromAxisDeg < vertical.get(0).value() || fromAxisDeg > vertical.get(last).value()) {
      return 0;
    }
    AngleScale down = new AngleScale(vertical);
    int v = down.below(fromAxisDeg);
    double shareV = down.share(v, fromAxisDeg);
    if (isRound()) {
      return between(rows.get(0), v, shareV);
    }
    double folded = folded(aroundDeg);
    AngleScale about = new AngleScale(horizontal);
    int h = about.below(folded);
    double shareH = about.share(h, folded);
    return between(rows.get(h), v, shareV) * (1 - shareH)
        + between(rows.get(h + 1), v, shareV) * shareH;
  }

  /** The same direction within the horizontal angles that the table has. */
  private double folded(double aroundDeg) {
    double last = horizontal.get(horizontal.size() - 1).value();
    double turned = aroundDeg - 360 * Math.floor(aroundDeg / 360);
    if (last == 360) {
      return Math.min(360, turned);
    }
    double half = turned > 180 ? 360 - turned : turned;
    return last == 180 ? half : half > 90 ? 180 - half : half;
  }

  private static double between(List<Double> row, int index, double share) {
    return row.get(index) * (1 - share) + row.get(index + 1) * share;
  }

  /** The mean over all horizontal angles at one vertical angle: exact for what is linear. */
  private double meanAround(int v) {
    if (isRound()) {
      return rows.get(0).get(v);
    }
    double sum = 0;
    for (int h = 0; h + 1 < horizontal.size(); h++) {
      double width = horizontal.get(h + 1).value() - horizontal.get(h).value();
      sum += (rows.get(h).get(v) + rows.get(h + 1).get(v)) / 2 * width;
    }
    return sum / horizontal.get(horizontal.size() - 1).value();
  }

  /** The sum over the zones of the integral of a linear intensity times the sine. */
  private double integralCandelaSr() {
    double sum = 0;
    for (int v = 0; v + 1 < vertical.size(); v++) {
      double a = vertical.get(v).toRadians();
      double b = vertical.get(v + 1).toRadians();
      double first = meanAround(v);
      double slope = (meanAround(v + 1) - first) / (b - a);
      // By parts: the integral of (t - a) sin t is sin b - sin a - (b - a) cos b.
      sum +=
          first * (StrictMath.cos(a) - StrictMath.cos(b))
              + slope * (StrictMath.sin(b) - StrictMath.sin(a) - (b - a) * StrictMath.cos(b));
    }
    return 2 * Math.PI * sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CandelaTable table
        && vertical.equals(table.vertical)
        && horizontal.equals(table.horizontal)
        && rows.equals(table.rows);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * vertical.hashCode() + horizontal.hashCode()) + rows.hashCode();
  }

  @Override
  public String toString() {
    return "table of " + horizontal.size() + " × " + vertical.size() + " intensities";
  }
}
