package lampwright.gear.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Robust linear least squares in stops: Huber's weights by iterated reweighting, scale by the
 * median absolute deviation (Huber, Robust Statistics, 1981, chapter 7).
 *
 * <p>Huber's, and not weights that fall to zero, because his sum has one minimum: the same readings
 * in another order, or from another start, give the same answer, and no value ever loses all of its
 * readings.
 *
 * <p>Unknowns that the rows do not tell apart are no error: the fit works in the space that the
 * rows span, and answers only for {@link #estimate combinations} that lie in it.
 */
final class RobustFit {

  /** Of a reading until the readings say otherwise: common practice, no source. */
  static final double USUAL_SCATTER_STOPS = 0.1;

  /** For how many readings that expectation counts. */
  private static final double USUAL_SCATTER_READINGS = 2;

  /**
   * Where weights begin to fall, in standard deviations: 95 % as sharp as plain when all is well.
   */
  private static final double HUBER = 1.345;

  /** From the median absolute deviation of a normal distribution to its standard deviation. */
  private static final double MEDIAN_TO_DEVIATION = 1.4826;

  /** Above this leverage a reading is its own only witness, and its residual says nothing. */
  static final double OWN_WITNESS = 0.9;

  /** Beyond this no light on earth differs; readings that say so are nonsense. */
  private static final double MOST_STOPS = 200;

  private static final double SMALLEST_SINGULAR_SHARE = 1e-9;
  private static final double IN_SPACE = 1e-8;
  private static final int ITERATIONS = 300;

  /** After so many the scale stays, so that the rest surely converges. */
  private static final int SCALING = 60;

  private static final double SETTLED_STOPS = 1e-12;

  /** A combination's value and how sure it is. */
  record Estimate(Stops value, Uncertainty uncertainty) {}

  private final List<FitRow> rows;
  private final RealMatrix span;
  private final RealMatrix design;
  private final double[] weights;
  private final double[] plainLeverages;
  private final double[] leverages;
  private final RealVector plain;
  private final RealVector solution;
  private final double scatter;
  private final RealMatrix covariance;
  private final double interval;

  private RobustFit(List<FitRow> rows) {
    this.rows = List.copyOf(rows);
    RealMatrix all =
        MatrixUtils.createRealMatrix(
            rows.stream().map(row -> row.combination().toArray()).toArray(double[][]::new));
    span = span(all);
    design = all.multiply(span);
    double[] whole = new double[rows.size()];
    Arrays.fill(whole, 1);
    weights = whole.clone();
    plain = solve(USUAL_SCATTER_STOPS);
    plainLeverages = leverages(USUAL_SCATTER_STOPS, whole);
    RealVector current = plain;
    double scale = scale(current);
    boolean settled = false;
    for (int i = 0; i < ITERATIONS && !settled; i++) {
      reweigh(current, scale);
      RealVector next = solve(scale);
      settled = next.getLInfDistance(current) < SETTLED_STOPS && i > 0;
      current = next;
      scale = i < SCALING ? scale(current) : scale;
    }
    solution = current;
    scatter = scale;
    double freedom = freedom();
    covariance = inverse(deviation(freedom), whole);
    leverages = leverages(scatter, weights);
    interval = StudentT.halfWidthOf95(USUAL_SCATTER_READINGS + freedom);
  }

  /**
   * Fits.
   *
   * @param rows at least one, all of the same length, not all zero
   */
  static RobustFit of(List<FitRow> rows) {
    return new RobustFit(rows);
  }

  /** An orthonormal base, in columns, of the combinations that the rows determine. */
  private static RealMatrix span(RealMatrix all) {
    SingularValueDecomposition decomposition = new SingularValueDecomposition(all);
    double[] sizes = decomposition.getSingularValues();
    int rank = 0;
    while (rank < sizes.length && sizes[rank] > sizes[0] * SMALLEST_SINGULAR_SHARE) {
      rank++;
    }
    return decomposition.getV().getSubMatrix(0, all.getColumnDimension() - 1, 0, rank - 1);
  }

  private double importance(int row, double scale, double[] trust) {
    double deviation = rows.get(row).knownDeviation().orElse(scale);
    return trust[row] / (deviation * deviation);
  }

  /** Solved by orthogonal factors, which keep twice the digits of normal equations. */
  private RealVector solve(double scale) {
    RealMatrix weighted = design.copy();
    double[] values = new double[rows.size()];
    for (int i = 0; i < values.length; i++) {
      double root = Math.sqrt(importance(i, scale, weights));
      weighted.setRowVector(i, design.getRowVector(i).mapMultiply(root));
      values[i] = rows.get(i).valueStops() * root;
    }
    return new QRDecomposition(weighted).getSolver().solve(MatrixUtils.createRealVector(values));
  }

  private RealMatrix inverse(double scale, double[] trust) {
    int size = design.getColumnDimension();
    RealMatrix normal = MatrixUtils.createRealMatrix(size, size);
    for (int i = 0; i < rows.size(); i++) {
      RealVector row = design.getRowVector(i);
      normal = normal.add(row.outerProduct(row).scalarMultiply(importance(i, scale, trust)));
    }
    return MatrixUtils.inverse(normal);
  }

  /** How much of each row's fitted value is that row itself, from 0 to 1. */
  private double[] leverages(double scale, double[] trust) {
    RealMatrix inverse = inverse(scale, trust);
    double[] leverages = new double[rows.size()];
    for (int i = 0; i < leverages.length; i++) {
      RealVector row = design.getRowVector(i);
      leverages[i] = importance(i, scale, trust) * row.dotProduct(inverse.operate(row));
    }
    return leverages;
  }

  private double residual(RealVector at, int row) {
    return rows.get(row).valueStops() - design.getRowVector(row).dotProduct(at);
  }

  private void reweigh(RealVector at, double scale) {
    for (int i = 0; i < weights.length; i++) {
      double size = Math.abs(residual(at, i));
      boolean bent = rows.get(i).isReading() && size > HUBER * scale;
      weights[i] = bent ? HUBER * scale / size : 1;
    }
  }

  /** Asks whether other readings bear on a reading, so that its residual is one. */
  private boolean tellsOfScatter(int row) {
    return rows.get(row).isReading() && plainLeverages[row] < OWN_WITNESS;
  }

  /** The readings' scatter by the median of their sizes, pooled with the expectation. */
  private double scale(RealVector at) {
    double[] sizes = new double[rows.size()];
    int count = 0;
    for (int i = 0; i < sizes.length; i++) {
      if (tellsOfScatter(i)) {
        sizes[count] = Math.abs(residual(at, i)) / Math.sqrt(1 - plainLeverages[i]);
        count++;
      }
    }
    Arrays.sort(sizes, 0, count);
    double median = count == 0 ? 0 : (sizes[(count - 1) / 2] + sizes[count / 2]) / 2;
    double deviation = MEDIAN_TO_DEVIATION * median;
    return pooled(freedom() * deviation * deviation, freedom());
  }

  private static Stops bounded(double stops) {
    return new Stops(Math.max(-MOST_STOPS, Math.min(MOST_STOPS, stops)));
  }

  private static double pooled(double sumOfSquares, double freedom) {
    double expected = USUAL_SCATTER_READINGS * USUAL_SCATTER_STOPS * USUAL_SCATTER_STOPS;
    return Math.sqrt((expected + sumOfSquares) / (USUAL_SCATTER_READINGS + freedom));
  }

  /** Readings less what they were spent on. */
  private double freedom() {
    double freedom = 0;
    for (int i = 0; i < plainLeverages.length; i++) {
      freedom += tellsOfScatter(i) ? 1 - plainLeverages[i] : 0;
    }
    return Math.max(0, freedom);
  }

  /** The deviation that Huber's covariance uses, corrected for few readings (section 7.6 there). */
  private double deviation(double freedom) {
    double squares = 0;
    double unbent = 0;
    double readings = 0;
    for (int i = 0; i < weights.length; i++) {
      if (tellsOfScatter(i)) {
        double influence = weights[i] * residual(solution, i);
        squares += influence * influence;
        unbent += weights[i] == 1 ? 1 : 0;
        readings++;
      }
    }
    if (readings == 0) {
      return pooled(0, 0);
    }
    // Where half of the readings are bent the formula has left its ground; it must not explode.
    double share = Math.max(0.5, unbent / readings);
    double correction = 1 + (readings - freedom) / readings * (1 - share) / share;
    double factor = correction / share;
    return pooled(squares * factor * factor, freedom);
  }

  /**
   * Returns the value of a combination of the unknowns; empty where the rows do not tell it, or
   * tell nonsense.
   */
  Optional<Estimate> estimate(double[] combination) {
    RealVector wanted = MatrixUtils.createRealVector(combination);
    RealVector inSpan = span.preMultiply(wanted);
    double value = inSpan.dotProduct(solution);
    boolean outside = span.operate(inSpan).getDistance(wanted) > IN_SPACE * wanted.getNorm();
    if (outside || Math.abs(value) > MOST_STOPS) {
      return Optional.empty();
    }
    double error = Math.sqrt(Math.max(0, inSpan.dotProduct(covariance.operate(inSpan))));
    return Optional.of(
        new Estimate(new Stops(value), new Uncertainty(bounded(error), bounded(error * interval))));
  }

  /** Returns by how much a plain fit's value of a combination would have been higher. */
  Stops plainMinusRobust(double[] combination) {
    RealVector inSpan = span.preMultiply(MatrixUtils.createRealVector(combination));
    return bounded(inSpan.dotProduct(plain) - inSpan.dotProduct(solution));
  }

  /** Returns what was seen less what the fit says. */
  Stops residual(int row) {
    return bounded(residual(solution, row));
  }

  /** Returns what was seen less what the fit without that row would say. */
  Stops offFromTheOthers(int row) {
    double others = Math.max(1 - leverages[row], 1 - OWN_WITNESS);
    return bounded(residual(solution, row) / others);
  }

  /** Returns how many standard deviations a row is off; 0 for its own only witness. */
  double deviations(int row) {
    double leverage = plainLeverages[row];
    return leverage >= OWN_WITNESS
        ? 0
        : Math.abs(residual(solution, row)) / (scatter * Math.sqrt(1 - leverage));
  }

  /** Returns how much of a row's fitted value is the row itself, from 0 to 1, were all trusted. */
  double leverage(int row) {
    return plainLeverages[row];
  }

  /** Returns how far a row was trusted: 1 wholly, less where it is out of line. */
  double weight(int row) {
    return weights[row];
  }

  /** Returns the scatter of the readings, one standard deviation. */
  Stops scatter() {
    return bounded(scatter);
  }
}
