package lampwright.engine.map;

import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/**
 * A rectangle in space with a grid of points, from edge to edge and equally far apart: where a
 * reading map is taken.
 *
 * @param corner the first point of the first row
 * @param along the way of a row
 * @param length of a row, above 0
 * @param up the way from row to row, square to a row
 * @param height from the first row to the last, above 0
 * @param columns points in a row, 2 to 2000
 * @param rows how many rows, 2 to 2000
 */
public record MapPlane(
    Point corner,
    UnitVector along,
    Metres length,
    UnitVector up,
    Metres height,
    int columns,
    int rows) {

  private static final int MOST = 2000;
  private static final double SQUARE = 1e-9;

  /** Checks the bounds. */
  public MapPlane {
    Bounds.requirePositive("Length of a map", length.value(), "m");
    Bounds.requirePositive("Height of a map", height.value(), "m");
    Bounds.requireBetween("Columns of a map", columns, "", 2, MOST);
    Bounds.requireBetween("Rows of a map", rows, "", 2, MOST);
    double cosine = along.cosineTo(up);
    if (Math.abs(cosine) > SQUARE) {
      throw new IllegalArgumentException(
          Bounds.subject("Cosine between row and column", cosine, "")
              + " must be 0. Maybe the rows are not square to the columns?");
    }
  }

  /**
   * Returns a level plane; rows run to camera right, from row to row away from the camera.
   *
   * @param nearLeft its corner nearest the camera at camera left, at the plane's height
   */
  public static MapPlane plan(Point nearLeft, Metres width, Metres depth, int columns, int rows) {
    return new MapPlane(
        nearLeft, UnitVector.of(1, 0, 0), width, UnitVector.of(0, 1, 0), depth, columns, rows);
  }

  /**
   * Returns an upright plane; rows are level, from row to row upward.
   *
   * @param lowLeft its lower corner where the rows begin
   * @param bearing the way of a row, from camera right toward away from the camera: 0 is a plane
   *     square to the camera's axis
   */
  public static MapPlane upright(
      Point lowLeft, Degrees bearing, Metres width, Metres height, int columns, int rows) {
    double radians = bearing.toRadians();
    UnitVector along = UnitVector.of(StrictMath.cos(radians), StrictMath.sin(radians), 0);
    return new MapPlane(lowLeft, along, width, UnitVector.of(0, 0, 1), height, columns, rows);
  }

  /** Returns the number of points. */
  public int size() {
    return columns * rows;
  }

  /** Returns a point of the grid; column and row from 0. */
  public Point at(int column, int row) {
    return between(column, row);
  }

  /** Returns a place between the points of the grid likewise. */
  Point between(double column, double row) {
    return corner
        .moved(along, length.value() * column / (columns - 1))
        .moved(up, height.value() * row / (rows - 1));
  }
}
