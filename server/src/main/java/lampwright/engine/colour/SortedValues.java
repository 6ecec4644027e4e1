package lampwright.engine.colour;

import java.util.Arrays;
import lampwright.engine.unit.Bounds;

/** Many numbers in ascending order, and what statistics say about them. */
final class SortedValues {

  private final double[] sorted;

  /** Sorts a copy of one or more finite numbers. */
  SortedValues(double[] values) {
    Bounds.requirePositive("Number of pixels", values.length, "");
    sorted = values.clone();
    Arrays.sort(sorted);
    Bounds.requireFinite("Smallest value", sorted[0], "");
    Bounds.requireFinite("Largest value", sorted[sorted.length - 1], "");
  }

  double mean() {
    double sum = 0;
    for (double value : sorted) {
      sum += value;
    }
    return sum / sorted.length;
  }

  /** Returns the standard deviation of these values as the whole population. */
  double deviation() {
    double mean = mean();
    double sum = 0;
    for (double value : sorted) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / sorted.length);
  }

  /** Returns the value below which so many percent lie, straight between neighbours. */
  double percentile(double percent) {
    double place = percent / 100 * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  double shareBelow(double limit) {
    int count = 0;
    while (count < sorted.length && sorted[count] < limit) {
      count++;
    }
    return (double) count / sorted.length;
  }

  double shareAbove(double limit) {
    int count = 0;
    while (count < sorted.length && sorted[sorted.length - 1 - count] > limit) {
      count++;
    }
    return (double) count / sorted.length;
  }
}
