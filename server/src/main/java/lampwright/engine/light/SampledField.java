package lampwright.engine.light;

import lampwright.engine.beam.Spread;

/**
 * A face of which each element has a spread that is not even: lobes, tables, grids. Gauss
 * quadrature over the part of the face above the receiver's horizon, in panels of at most the
 * distance (less for narrow spreads), 2 to 8 points a side by the distance.
 *
 * <p>For smooth spreads (lobes) the error is below 0.001 stop from a twentieth of the face's size
 * on. Nearer the panels end at 64 a side and the error grows. Spreads with kinks (grids, tables)
 * come out rougher; their error has not been measured. An element nearer than a millimetre counts
 * as a millimetre away.
 */
public final class SampledField implements LightField {

  private static final int MOST_PANELS = 64;

  /** Face size in panels, below which fewer points a side do. */
  private static final double FOUR_DO = 0.4;

  private static final double TWO_DO = 0.04;

  private final Spread spread;
  private final boolean round;
  private final double[] cornerX;
  private final double[] cornerY;
  private final double radius;
  private final double halfWidth;
  private final double halfHeight;
  private final double area;
  private final double narrowness;

  private SampledField(
      Spread spread,
      double[] cornerX,
      double[] cornerY,
      double radius,
      double halfWidth,
      double halfHeight,
      double area) {
    this.spread = spread;
    this.round = spread.isRound();
    this.cornerX = cornerX;
    this.cornerY = cornerY;
    this.radius = radius;
    this.halfWidth = halfWidth;
    this.halfHeight = halfHeight;
    this.area = area;
    this.narrowness = Math.min(1, Math.sqrt(spread.solidAngleSr() / Math.PI));
  }

  static SampledField ofDisc(double radius, Spread spread) {
    return new SampledField(
        spread, new double[0], new double[0], radius, radius, radius, Math.PI * radius * radius);
  }

  static SampledField ofPolygon(Corners corners, Spread spread) {
    double[] x = new double[corners.count()];
    double[] y = new double[corners.count()];
    double halfWidth = 0;
    double halfHeight = 0;
    for (int i = 0; i < x.length; i++) {
      x[i] = corners.x(i);
      y[i] = corners.y(i);
      halfWidth = Math.max(halfWidth, x[i]);
      halfHeight = Math.max(halfHeight, y[i]);
    }
    return new SampledField(spread, x, y, 0, halfWidth, halfHeight, corners.area());
  }

  @Override
  public double flat(double x, double y, double z, double nx, double ny, double nz) {
    return cornerX.length == 0
        ? overDisc(x, y, z, nx, ny, nz, false)
        : overPolygon(x, y, z, nx, ny, nz, false);
  }

  @Override
  public double dome(double x, double y, double z, double nx, double ny, double nz) {
    return cornerX.length == 0
        ? overDisc(x, y, z, nx, ny, nz, true)
        : overPolygon(x, y, z, nx, ny, nz, true);
  }

  /** Metres of face that one panel may span: the distance from its nearest part, less if narrow. */
  private double panel(double x, double y, double z) {
    double beside = Math.max(0, Math.abs(x) - halfWidth);
    double above = Math.max(0, Math.abs(y) - halfHeight);
    double distance = Math.sqrt(beside * beside + above * above + z * z);
    return narrowness * Math.max(distance, NEAREST_M);
  }

  private static GaussRule rule(double panels) {
    return panels <= TWO_DO ? GaussRule.TWO : panels <= FOUR_DO ? GaussRule.FOUR : GaussRule.EIGHT;
  }

  private static int whole(double panels) {
    return (int) Math.max(1, Math.min(MOST_PANELS, Math.ceil(panels)));
  }

  /** How many panels a point lies along, counted over all points of all panels in turn. */
  private static double share(int point, GaussRule rule) {
    int panel = point / rule.order();
    return panel + (1 + rule.node(point % rule.order())) / 2;
  }

  /** Chords across the receiver's normal, from its side of the disc down to the horizon. */
  private double overDisc(
      double x, double y, double z, double nx, double ny, double nz, boolean dome) {
    double across = Math.sqrt(nx * nx + ny * ny);
    double line = nx * x + ny * y + nz * z;
    if (!dome && line >= across * radius) {
      return 0;
    }
    boolean whole = dome || line <= -across * radius;
    double ex = across == 0 ? 1 : nx / across;
    double ey = across == 0 ? 0 : ny / across;
    double chord = whole ? -radius : Math.max(-radius, Math.min(radius, line / across));
    double beta =
        whole ? Math.PI : StrictMath.atan2(Math.sqrt((radius - chord) * (radius + chord)), chord);
    double panels = 2 * radius / panel(x, y, z);
    // The chords' angle needs eight points even far away, where the square of its sine remains.
    GaussRule alongRule = GaussRule.EIGHT;
    int order = alongRule.order();
    GaussRule chordRule = rule(panels);
    int count = whole(panels);
    double sum = 0;
    for (int i = 0; i < count * order; i++) {
      // Around a whole disc the angle is periodic, where equal steps beat Gauss's.
      double angle = beta * (whole ? (i + 0.5) / order : share(i, alongRule)) / count;
      double weight = whole ? 2.0 / order : alongRule.weight(i % order);
      double sin = StrictMath.sin(angle);
      double along = radius * StrictMath.cos(angle);
      double inner = 0;
      for (int j = 0; j < count * chordRule.order(); j++) {
        double aside = radius * sin * (2 * share(j, chordRule) / count - 1);
        inner +=
            chordRule.weight(j % chordRule.order())
                * element(
                    x - (along * ex - aside * ey),
                    y - (along * ey + aside * ex),
                    z,
                    nx,
                    ny,
                    nz,
                    dome);
      }
      sum += weight * sin * sin * inner;
    }
    return sum * beta / (2.0 * count) * radius * radius / count / area;
  }

  private double overPolygon(
      double x, double y, double z, double nx, double ny, double nz, boolean dome) {
    int count = cornerX.length;
    boolean above = true;
    boolean below = true;
    for (int i = 0; i < count; i++) {
      double height = height(i, x, y, z, nx, ny, nz);
      above &= height >= 0;
      below &= height <= 0;
    }
    if (dome || above) {
      return overFan(cornerX, cornerY, count, x, y, z, nx, ny, nz, dome);
    }
    if (below) {
      return 0;
    }
    double[] cutX = new double[count + 1];
    double[] cutY = new double[count + 1];
    int cut = 0;
    for (int i = 0; i < count; i++) {
      int j = (i + 1) % count;
      double a = height(i, x, y, z, nx, ny, nz);
      double b = height(j, x, y, z, nx, ny, nz);
      if (a >= 0) {
        cutX[cut] = cornerX[i];
        cutY[cut] = cornerY[i];
        cut++;
      }
      if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
        cutX[cut] = cornerX[i] + a / (a - b) * (cornerX[j] - cornerX[i]);
        cutY[cut] = cornerY[i] + a / (a - b) * (cornerY[j] - cornerY[i]);
        cut++;
      }
    }
    return overFan(cutX, cutY, cut, x, y, z, nx, ny, nz, false);
  }

  private double height(int corner, double x, double y, double z, double nx, double ny, double nz) {
    return nx * (cornerX[corner] - x) + ny * (cornerY[corner] - y) - nz * z;
  }

  /** Quadrangles that share the first corner; the last may have two corners in one. */
  private double overFan(
      double[] cx,
      double[] cy,
      int count,
      double x,
      double y,
      double z,
      double nx,
      double ny,
      double nz,
      boolean dome) {
    double panel = panel(x, y, z);
    double sum = 0;
    for (int i = 1; i + 1 < count; i += 2) {
      int last = Math.min(i + 2, count - 1);
      sum +=
          overQuadrangle(
              cx[0], cy[0], cx[i], cy[i], cx[i + 1], cy[i + 1], cx[last], cy[last], panel, x, y, z,
              nx, ny, nz, dome);
    }
    return sum / area;
  }

  private double overQuadrangle(
      double ax,
      double ay,
      double bx,
      double by,
      double cx,
      double cy,
      double dx,
      double dy,
      double panel,
      double x,
      double y,
      double z,
      double nx,
      double ny,
      double nz,
      boolean dome) {
    double across = Math.max(length(bx - ax, by - ay), length(cx - dx, cy - dy)) / panel;
    double up = Math.max(length(dx - ax, dy - ay), length(cx - bx, cy - by)) / panel;
    GaussRule acrossRule = rule(across);
    GaussRule upRule = rule(up);
    int columns = whole(across);
    int rows = whole(up);
    double sum = 0;
    for (int i = 0; i < columns * acrossRule.order(); i++) {
      int column = i % acrossRule.order();
      double s = share(i, acrossRule) / columns;
      double lowX = ax + s * (bx - ax);
      double lowY = ay + s * (by - ay);
      double wayX = dx + s * (cx - dx) - lowX;
      double wayY = dy + s * (cy - dy) - lowY;
      for (int j = 0; j < rows * upRule.order(); j++) {
        int row = j % upRule.order();
        double t = share(j, upRule) / rows;
        double stretchX = (1 - t) * (bx - ax) + t * (cx - dx);
        double stretchY = (1 - t) * (by - ay) + t * (cy - dy);
        sum +=
            acrossRule.weight(column)
                * upRule.weight(row)
                * Math.abs(stretchX * wayY - stretchY * wayX)
                * element(x - (lowX + t * wayX), y - (lowY + t * wayY), z, nx, ny, nz, dome);
      }
    }
    return sum / (4.0 * columns * rows);
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /** What an element gives a receiver that lies so far from it, were all the face there. */
  private double element(
      double x, double y, double z, double nx, double ny, double nz, boolean dome) {
    double squared = Math.max(x * x + y * y + z * z, NEAREST_M * NEAREST_M);
    double distance = Math.sqrt(squared);
    double received = -(nx * x + ny * y + nz * z) / distance;
    double taken = Math.max(0, dome ? (1 + received) / 2 : received);
    double around = round ? 0 : StrictMath.atan2(x, y);
    return spread.relativeAt(z / distance, around) * taken / squared;
  }
}
