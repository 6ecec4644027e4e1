package lampwright.engine.beam;

import java.util.List;
import java.util.Optional;
import lampwright.engine.beam.CandelaTable.Fault;
import lampwright.engine.beam.CandelaTable.Part;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;

/** Finds the first thing that keeps angles and intensities from being a {@link CandelaTable}. */
final class TableFaults {

  /** Below this nothing is worth tabulating, and ratios of next to nothing are nothing. */
  private static final double FAINTEST_CANDELA = 1e-9;

  private TableFaults() {}

  static Optional<Fault> find(
      List<Degrees> vertical, List<Degrees> horizontal, List<List<Double>> rowsCandela) {
    return angles(Part.VERTICAL, "Vertical angle", vertical, 2, 180)
        .or(() -> angles(Part.HORIZONTAL, "Horizontal angle", horizontal, 1, 360))
        .or(() -> symmetry(horizontal))
        .or(() -> intensities(vertical.size(), horizontal.size(), rowsCandela));
  }

  private static Optional<Fault> angles(
      Part part, String name, List<Degrees> angles, int fewest, double largest) {
    if (angles.size() < fewest || angles.size() > CandelaTable.MOST_ANGLES) {
      return fault(
          part,
          0,
          name
              + "s ("
              + angles.size()
              + ") must be "
              + fewest
              + " to "
              + CandelaTable.MOST_ANGLES
              + ". Maybe leave out every second?");
    }
    for (int i = 0; i < angles.size(); i++) {
      double angle = angles.get(i).value();
      if (angle < 0 || angle > largest) {
        return fault(
            part,
            i,
            Bounds.subject(name, angle, "°") + " must be from 0 to " + Bounds.plain(largest) + ".");
      }
      if (i > 0 && angle < angles.get(i - 1).value() + CandelaTable.LEAST_STEP_DEG) {
        return fault(
            part,
            i,
            Bounds.subject(name, angle, "°")
                + " must be at least 0.0001 more than the one before it ("
                + Bounds.plain(angles.get(i - 1).value())
                + "). Maybe a number is missing or stands twice?");
      }
    }
    return Optional.empty();
  }

  private static Optional<Fault> symmetry(List<Degrees> horizontal) {
    double first = horizontal.get(0).value();
    double last = horizontal.get(horizontal.size() - 1).value();
    if (first != 0) {
      return fault(
          Part.HORIZONTAL,
          0,
          Bounds.subject("First horizontal angle", first, "°")
              + " must be 0. Maybe turn the data so that they begin at 0?");
    }
    if (last != 0 && last != 90 && last != 180 && last != 360) {
      return fault(
          Part.HORIZONTAL,
          horizontal.size() - 1,
          Bounds.subject("Last horizontal angle", last, "°")
              + " must be 0, 90, 180 or 360. Maybe repeat the first plane at 360?");
    }
    return Optional.empty();
  }

  private static Optional<Fault> intensities(
      int columns, int rowCount, List<List<Double>> rowsCandela) {
    if ((long) columns * rowCount > CandelaTable.MOST_INTENSITIES) {
      return fault(
          Part.INTENSITIES,
          0,
          "Intensities ("
              + (long) columns * rowCount
              + ") must be at most "
              + CandelaTable.MOST_INTENSITIES
              + ". Maybe leave out every second angle?");
    }
    if (rowsCandela.size() != rowCount) {
      return fault(
          Part.INTENSITIES,
          0,
          "Rows of intensities ("
              + rowsCandela.size()
              + ") must be "
              + rowCount
              + ", one for each horizontal angle.");
    }
    boolean allDark = true;
    for (int row = 0; row < rowCount; row++) {
      List<Double> values = rowsCandela.get(row);
      if (values.size() != columns) {
        return fault(
            Part.INTENSITIES,
            row * columns,
            "Intensities in row "
                + (row + 1)
                + " ("
                + values.size()
                + ") must be "
                + columns
                + ", one for each vertical angle.");
      }
      for (int column = 0; column < columns; column++) {
        double candela = values.get(column);
        if (!(candela >= 0 && candela <= CandelaTable.LARGEST_CANDELA)) {
          return fault(
              Part.INTENSITIES,
              row * columns + column,
              Bounds.subject("Intensity", candela, "cd") + " must be from 0 to 1000000000.");
        }
        allDark &= candela < FAINTEST_CANDELA;
      }
    }
    return allDark
        ? fault(
            Part.INTENSITIES, 0, "Intensities must not all be next to 0. Maybe the multiplier is?")
        : Optional.empty();
  }

  private static Optional<Fault> fault(Part part, int index, String message) {
    return Optional.of(new Fault(part, index, message));
  }
}
