package lampwright.engine.light;

/**
 * An evenly bright flat polygon, by Lambert's contour formula (source lambert-contour): the light
 * vector is half the sum over the sides of the angle that a side fills times the normal of the
 * plane through it and the receiver. Exact, also where the receiver's horizon cuts the face.
 *
 * <p>At and behind the plane of the face there is no light. Farther than 100,000 radii the point
 * law takes over, which is nearer than the rounding of the sum (1e-10).
 */
public final class PolygonField implements LightField {

  /**
   * In radii of the face; here the rounding of the contour is as large as the point law's error.
   */
  private static final double FAR = 1e5;

  private final Corners corners;
  private final int count;
  private final double perArea;
  private final double farSquared;

  PolygonField(Corners corners) {
    this.corners = corners;
    count = corners.count();
    perArea = 1 / (2 * corners.area());
    double far = FAR * corners.radius();
    farSquared = far * far;
  }

  /** Returns the number of corners. */
  public int count() {
    return count;
  }

  /** Returns how far a corner lies to the source's right, in metres. */
  public double cornerX(int corner) {
    return corners.x(corner);
  }

  /** Returns how far a corner lies up from the middle, in metres. */
  public double cornerY(int corner) {
    return corners.y(corner);
  }

  /** Returns how far the farthest corner is from the middle, in metres. */
  public double radiusM() {
    return corners.radius();
  }

  /** Returns one over twice the area: the factor from the contour's sum to the geometry factor. */
  public double perTwiceArea() {
    return perArea;
  }

  @Override
  public double flat(double x, double y, double z, double nx, double ny, double nz) {
    if (z <= 0) {
      return 0;
    }
    double squared = x * x + y * y + z * z;
    if (squared > farSquared) {
      return z * Math.max(0, -(nx * x + ny * y + nz * z)) / (squared * squared);
    }
    double sum = 0;
    boolean cut = false;
    double leaveX = 0;
    double leaveY = 0;
    double enterX = 0;
    double enterY = 0;
    double ax = corners.x(count - 1) - x;
    double ay = corners.y(count - 1) - y;
    double aboveA = nx * ax + ny * ay - nz * z;
    for (int i = 0; i < count; i++) {
      double bx = corners.x(i) - x;
      double by = corners.y(i) - y;
      double aboveB = nx * bx + ny * by - nz * z;
      if (aboveA >= 0 && aboveB >= 0) {
        sum += side(ax, ay, bx, by, z, nx, ny, nz);
      } else if (aboveA >= 0 || aboveB >= 0) {
        // The side crosses the horizon: what is above it counts, and the horizon closes the rest.
        cut = true;
        double share = aboveA / (aboveA - aboveB);
        double crossX = ax + share * (bx - ax);
        double crossY = ay + share * (by - ay);
        if (aboveA >= 0) {
          sum += side(ax, ay, crossX, crossY, z, nx, ny, nz);
          leaveX = crossX;
          leaveY = crossY;
        } else {
          sum += side(crossX, crossY, bx, by, z, nx, ny, nz);
          enterX = crossX;
          enterY = crossY;
        }
      }
      ax = bx;
      ay = by;
      aboveA = aboveB;
    }
    if (cut) {
      sum += side(leaveX, leaveY, enterX, enterY, z, nx, ny, nz);
    }
    return Math.max(0, -sum * perArea);
  }

  /**
   * Exact: half the sum of the light vector along the axis, uncut, and the scalar light, which is
   * the solid angle over the area.
   */
  @Override
  public double dome(double x, double y, double z, double nx, double ny, double nz) {
    if (z <= 0) {
      return 0;
    }
    double squared = x * x + y * y + z * z;
    if (squared > farSquared) {
      double distance = Math.sqrt(squared);
      double cosine = -(nx * x + ny * y + nz * z) / distance;
      return z / distance * Math.max(0, 1 + cosine) / 2 / squared;
    }
    double sum = 0;
    double solidAngle = 0;
    double firstX = corners.x(0) - x;
    double firstY = corners.y(0) - y;
    double ax = corners.x(count - 1) - x;
    double ay = corners.y(count - 1) - y;
    for (int i = 0; i < count; i++) {
      double bx = corners.x(i) - x;
      double by = corners.y(i) - y;
      sum += side(ax, ay, bx, by, z, nx, ny, nz);
      if (i > 1) {
        solidAngle += solidAngle(firstX, firstY, ax, ay, bx, by, z);
      }
      ax = bx;
      ay = by;
    }
    return Math.max(0, (solidAngle * 2 - sum) * perArea / 2);
  }

  /** The angle of a side at z below the receiver, times its plane's unit normal, along n. */
  private static double side(
      double ax, double ay, double bx, double by, double z, double nx, double ny, double nz) {
    double gx = -z * (ay - by);
    double gy = -z * (bx - ax);
    double gz = ax * (by - ay) - ay * (bx - ax);
    double length = Math.sqrt(gx * gx + gy * gy + gz * gz);
    if (length == 0) {
      return 0;
    }
    double angle = StrictMath.atan2(length, ax * bx + ay * by + z * z);
    return angle * (gx * nx + gy * ny + gz * nz) / length;
  }

  /** Of a triangle in the face, by van Oosterom and Strackee; the triple product is exact here. */
  private static double solidAngle(
      double ax, double ay, double bx, double by, double cx, double cy, double z) {
    double zz = z * z;
    double a = Math.sqrt(ax * ax + ay * ay + zz);
    double b = Math.sqrt(bx * bx + by * by + zz);
    double c = Math.sqrt(cx * cx + cy * cy + zz);
    double triple = z * ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
    double rest =
        a * b * c
            + (ax * bx + ay * by + zz) * c
            + (ax * cx + ay * cy + zz) * b
            + (bx * cx + by * cy + zz) * a;
    return 2 * StrictMath.atan2(triple, rest);
  }
}
