package lampwright.engine.light;

import lampwright.engine.beam.Spread;

/**
 * The light of a sampled face at one receiver, panel by panel. A panel that is too large for its
 * own distance is halved, so that only those close by are small; within a panel Gauss's points are
 * 2 to 5 a side, by its size. Where all of a disc shines and lies far enough off, the points are
 * those of a rule for discs.
 */
final class PanelSum {

  /** Of how many halves a side may be: close to a large face a panel has a millimetre then. */
  private static final int MOST_HALVES = 11;

  /** A panel's size over what it may have, below which so many points a side do. */
  private static final double THREE_DO = 0.4;

  private static final double TWO_DO = 0.04;

  /** Likewise of a disc, below which seven points do. */
  private static final double SEVEN_DO = 0.2;

  private final Spread spread;
  private final double panel;

  /** Farther off than this, a place on the face sends nothing. */
  private final double reach;

  private final double x;
  private final double y;
  private final double z;
  private final double nx;
  private final double ny;
  private final double nz;
  private final boolean dome;

  /** The quadrangle that is summed, as its first corner and what is added along its sides. */
  private double ax;

  private double ay;
  private double sideX;
  private double sideY;
  private double upX;
  private double upY;
  private double skewX;
  private double skewY;

  /** The disc that is summed, and the way across it toward the receiver's side. */
  private double radius;

  private double ex;
  private double ey;

  /**
   * For a receiver.
   *
   * @param reachCosine of the angle from the axis beyond which the spread has nothing
   * @param panel how large a panel may be over its distance, up to 1
   * @param x of the receiver in the source's frame, in metres
   * @param nx its direction in the same frame
   */
  PanelSum(
      Spread spread,
      double reachCosine,
      double panel,
      double x,
      double y,
      double z,
      double nx,
      double ny,
      double nz,
      boolean dome) {
    this.spread = spread;
    this.panel = panel;
    this.reach = z > 0 && reachCosine > 0 ? z / reachCosine : Double.POSITIVE_INFINITY;
    this.x = x;
    this.y = y;
    this.z = z;
    this.nx = nx;
    this.ny = ny;
    this.nz = nz;
    this.dome = dome;
  }

  /** How far a place on the face is above the receiver's horizon; a dome has none. */
  double aboveHorizon(double faceX, double faceY) {
    return dome ? 1 : nx * (faceX - x) + ny * (faceY - y) - nz * z;
  }

  /** The sum over a quadrangle, corners in order, two of which may be one; times its area. */
  double overQuadrangle(
      double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
    this.ax = ax;
    this.ay = ay;
    sideX = bx - ax;
    sideY = by - ay;
    upX = dx - ax;
    upY = dy - ay;
    skewX = cx - dx - sideX;
    skewY = cy - dy - sideY;
    return quadrangle(0, 1, 0, 1, MOST_HALVES, MOST_HALVES);
  }

  private double cornerX(double s, double t) {
    return ax + s * sideX + t * (upX + s * skewX);
  }

  private double cornerY(double s, double t) {
    return ay + s * sideY + t * (upY + s * skewY);
  }

  private double quadrangle(
      double s0, double s1, double t0, double t1, int halvesAcross, int halvesUp) {
    double ax = cornerX(s0, t0);
    double ay = cornerY(s0, t0);
    double bx = cornerX(s1, t0);
    double by = cornerY(s1, t0);
    double cx = cornerX(s1, t1);
    double cy = cornerY(s1, t1);
    double dx = cornerX(s0, t1);
    double dy = cornerY(s0, t1);
    double away =
        away(
            Math.min(Math.min(ax, bx), Math.min(cx, dx)),
            Math.max(Math.max(ax, bx), Math.max(cx, dx)),
            Math.min(Math.min(ay, by), Math.min(cy, dy)),
            Math.max(Math.max(ay, by), Math.max(cy, dy)),
            x,
            y);
    if (away > reach) {
      return 0;
    }
    double may = panel * away;
    double across = Math.max(length(bx - ax, by - ay), length(cx - dx, cy - dy));
    double up = Math.max(length(dx - ax, dy - ay), length(cx - bx, cy - by));
    if (across > may && halvesAcross > 0 && (across >= up || halvesUp == 0)) {
      double middle = (s0 + s1) / 2;
      return quadrangle(s0, middle, t0, t1, halvesAcross - 1, halvesUp)
          + quadrangle(middle, s1, t0, t1, halvesAcross - 1, halvesUp);
    }
    if (up > may && halvesUp > 0) {
      double middle = (t0 + t1) / 2;
      return quadrangle(s0, s1, t0, middle, halvesAcross, halvesUp - 1)
          + quadrangle(s0, s1, middle, t1, halvesAcross, halvesUp - 1);
    }
    GaussRule acrossRule = rule(across / may);
    GaussRule upRule = rule(up / may);
    double sum = 0;
    for (int i = 0; i < acrossRule.order(); i++) {
      double s = s0 + (s1 - s0) * acrossRule.share(i);
      double lowX = cornerX(s, 0);
      double lowY = cornerY(s, 0);
      double wayX = upX + s * skewX;
      double wayY = upY + s * skewY;
      double inner = 0;
      for (int j = 0; j < upRule.order(); j++) {
        double t = t0 + (t1 - t0) * upRule.share(j);
        double stretch = Math.abs((sideX + t * skewX) * wayY - (sideY + t * skewY) * wayX);
        inner += upRule.weight(j) * stretch * element(x - (lowX + t * wayX), y - (lowY + t * wayY));
      }
      sum += acrossRule.weight(i) * inner;
    }
    return sum * (s1 - s0) * (t1 - t0) / 4;
  }

  /** The sum over a disc about the face's middle, times its area. */
  double overDisc(double radius) {
    double across = Math.sqrt(nx * nx + ny * ny);
    double line = nx * x + ny * y + nz * z;
    if (!dome && line >= across * radius) {
      return 0;
    }
    this.radius = radius;
    ex = across == 0 ? 1 : nx / across;
    ey = across == 0 ? 0 : ny / across;
    boolean whole = dome || line <= -across * radius;
    double size = 2 * radius / (panel * away(-radius, radius, -radius, radius, x, y));
    if (whole && size <= 1) {
      DiscRule rule = size <= SEVEN_DO ? DiscRule.SEVEN : DiscRule.TWENTY_ONE;
      double sum = 0;
      for (int i = 0; i < rule.order(); i++) {
        sum += rule.weight(i) * element(x - radius * rule.x(i), y - radius * rule.y(i));
      }
      return sum * Math.PI * radius * radius;
    }
    double chord = whole ? -radius : Math.max(-radius, Math.min(radius, line / across));
    double last =
        whole ? Math.PI : StrictMath.atan2(Math.sqrt((radius - chord) * (radius + chord)), chord);
    return chords(0, last, 0, 1, MOST_HALVES, MOST_HALVES);
  }

  /**
   * Chords across the receiver's normal, by the angle from its side of the disc to their ends, and
   * along them from 0 to 1.
   */
  private double chords(
      double from, double to, double t0, double t1, int halvesOfAngle, int halvesAlong) {
    double firstSine = StrictMath.sin(from);
    double lastSine = StrictMath.sin(to);
    double firstAlong = radius * StrictMath.cos(from);
    double lastAlong = radius * StrictMath.cos(to);
    double longest =
        radius * (from < Math.PI / 2 && to > Math.PI / 2 ? 1 : Math.max(firstSine, lastSine));
    double shortest = radius * Math.min(firstSine, lastSine);
    double low = 2 * t0 - 1;
    double high = 2 * t1 - 1;
    double away =
        away(
            lastAlong,
            firstAlong,
            low * (low < 0 ? longest : shortest),
            high * (high > 0 ? longest : shortest),
            x * ex + y * ey,
            y * ex - x * ey);
    if (away > reach) {
      return 0;
    }
    double may = panel * away;
    double angled = 2 * radius * (to - from) / Math.PI;
    double along = longest * (high - low);
    if (angled > may && halvesOfAngle > 0 && (angled >= along || halvesAlong == 0)) {
      double middle = (from + to) / 2;
      return chords(from, middle, t0, t1, halvesOfAngle - 1, halvesAlong)
          + chords(middle, to, t0, t1, halvesOfAngle - 1, halvesAlong);
    }
    if (along > may && halvesAlong > 0) {
      double middle = (t0 + t1) / 2;
      return chords(from, to, t0, middle, halvesOfAngle, halvesAlong - 1)
          + chords(from, to, middle, t1, halvesOfAngle, halvesAlong - 1);
    }
    // The angle needs eight points even far away, where the square of its sine remains.
    GaussRule angleRule = to - from > Math.PI / 4 ? GaussRule.EIGHT : GaussRule.FIVE;
    GaussRule alongRule = rule(along / may);
    double sum = 0;
    for (int i = 0; i < angleRule.order(); i++) {
      double angle = from + (to - from) * angleRule.share(i);
      double sine = StrictMath.sin(angle);
      double ahead = radius * StrictMath.cos(angle);
      double inner = 0;
      for (int j = 0; j < alongRule.order(); j++) {
        double aside = radius * sine * (2 * (t0 + (t1 - t0) * alongRule.share(j)) - 1);
        inner +=
            alongRule.weight(j)
                * element(x - (ahead * ex - aside * ey), y - (ahead * ey + aside * ex));
      }
      sum += angleRule.weight(i) * sine * sine * inner;
    }
    return sum * (to - from) * (t1 - t0) / 2 * radius * radius;
  }

  /** How far the receiver is from a rectangle on the face, in whose frame it is at this place. */
  private double away(
      double least, double most, double lowest, double highest, double atX, double atY) {
    double beside = Math.max(0, Math.max(least - atX, atX - most));
    double above = Math.max(0, Math.max(lowest - atY, atY - highest));
    return Math.max(Math.sqrt(beside * beside + above * above + z * z), LightField.NEAREST_M);
  }

  private static GaussRule rule(double size) {
    return size <= TWO_DO ? GaussRule.TWO : size <= THREE_DO ? GaussRule.THREE : GaussRule.FIVE;
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /** What an element gives a receiver that lies so far from it, were all the face there. */
  private double element(double toX, double toY) {
    double squared =
        Math.max(toX * toX + toY * toY + z * z, LightField.NEAREST_M * LightField.NEAREST_M);
    double distance = Math.sqrt(squared);
    double received = -(nx * toX + ny * toY + nz * z) / distance;
    double taken = Math.max(0, dome ? (1 + received) / 2 : received);
    return taken == 0 ? 0 : spread.relativeToward(toX, toY, z, distance) * taken / squared;
  }
}
