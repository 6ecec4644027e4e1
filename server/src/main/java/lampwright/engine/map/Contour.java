package lampwright.engine.map;

import java.util.List;
import lampwright.engine.unit.Bounds;

/**
 * One line of equal level over a grid, with the higher values on its left: around a hill it runs
 * from x to y.
 *
 * @param level the level, in whatever the grid's values are in
 * @param vertices its corners in order, two or more; of a closed line the first is not repeated
 * @param closed whether the last is joined to the first; else both ends lie on the grid's border
 */
public record Contour(double level, List<Vertex> vertices, boolean closed) {

  /**
   * A corner of a contour, from the grid's first node.
   *
   * @param xM metres along a row, or columns where the spacing is 1
   * @param yM metres along a column, or rows where the spacing is 1
   */
  public record Vertex(double xM, double yM) {

    /** Refuses numbers that are not finite. */
    public Vertex {
      Bounds.requireFinite("x", xM, "m");
      Bounds.requireFinite("y", yM, "m");
    }
  }

  /** Copies the corners and refuses too few. */
  public Contour {
    Bounds.requireFinite("Level", level, "");
    vertices = List.copyOf(vertices);
    if (vertices.size() < 2) {
      throw new IllegalArgumentException(
          Bounds.subject("Corners of a contour", vertices.size(), "") + " must be 2 or more.");
    }
  }

  /**
   * Returns the area inside a closed contour in square metres, plus around a hill and minus around
   * a hollow; 0 for an open one.
   */
  public double areaM2() {
    if (!closed) {
      return 0;
    }
    Vertex first = vertices.getFirst();
    double twice = 0;
    Vertex before = vertices.getLast();
    for (Vertex vertex : vertices) {
      // From the first corner, so that a small loop far out loses no digits.
      twice +=
          (before.xM - first.xM) * (vertex.yM - first.yM)
              - (vertex.xM - first.xM) * (before.yM - first.yM);
      before = vertex;
    }
    return twice / 2;
  }
}
