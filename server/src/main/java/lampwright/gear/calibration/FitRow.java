package lampwright.gear.calibration;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;

/**
 * One equation: the combination of unknowns that was seen, and what was seen.
 *
 * @param knownDeviation of a word that is not to be weighed by the readings' scatter; empty for a
 *     reading
 */
record FitRow(RealVector combination, double valueStops, Optional<Double> knownDeviation) {

  static FitRow ofReading(double[] combination, Stops value) {
    return new FitRow(MatrixUtils.createRealVector(combination), value.value(), Optional.empty());
  }

  static FitRow ofWord(double[] combination, Stops value, Stops deviation) {
    return new FitRow(
        MatrixUtils.createRealVector(combination), value.value(), Optional.of(deviation.value()));
  }

  boolean isReading() {
    return knownDeviation.isEmpty();
  }
}
