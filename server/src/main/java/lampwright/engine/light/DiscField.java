package lampwright.engine.light;

/**
 * An evenly bright disc in closed form (sources howell, B-13, and derived), exact for every place
 * and receiver, also where the receiver's horizon cuts the disc: then the contour is a chord and an
 * arc, and the arc's integral is elementary.
 *
 * <p>Notation: h before the face, a off the axis, r the radius, {@code P = a2+h2+r2}, {@code Q = 2
 * a r}, {@code S = sqrt(P2-Q2)}, {@code q = Q/(P+S)}. At and behind the plane of the face there is
 * no light.
 */
public final class DiscField implements LightField {

  private final double r;

  DiscField(double radiusM) {
    r = radiusM;
  }

  /** Returns the radius in metres. */
  public double radiusM() {
    return r;
  }

  @Override
  public double flat(double x, double y, double z, double nx, double ny, double nz) {
    if (z <= 0) {
      return 0;
    }
    double across = Math.sqrt(nx * nx + ny * ny);
    // The horizon meets the face in a line; it cuts where that line passes nearer than the radius.
    double line = nx * x + ny * y + nz * z;
    if (line >= across * r) {
      return 0;
    }
    return line <= -across * r
        ? uncut(x, y, z, nx, ny, nz)
        : cut(x, y, z, nx / across, ny / across, across, nz);
  }

  /** The light vector along n: one part against the axis, one toward the disc's middle. */
  private double uncut(double x, double y, double z, double nx, double ny, double nz) {
    double aa = x * x + y * y;
    double a = Math.sqrt(aa);
    double s = s(a, z);
    if (s == 0) {
      return 0;
    }
    double p = aa + z * z + r * r;
    double along = along(aa, z, p, s) / s;
    double towardMiddle = 2 * z / ((p + s) * s);
    return Math.max(0, -nz * along - (nx * x + ny * y) * towardMiddle);
  }

  private double s(double a, double z) {
    double near = z * z + (a - r) * (a - r);
    double far = z * z + (a + r) * (a + r);
    return Math.sqrt(near) * Math.sqrt(far);
  }

  /** (S+P-2a2)/(S+P), without the cancellation that it has off the disc's side. */
  private double along(double aa, double z, double p, double s) {
    double outside = aa - z * z - r * r;
    double rest = outside > 0 ? 4 * aa * z * z / (s + outside) : s - outside;
    return rest / (s + p);
  }

  private double cut(double x, double y, double z, double ex, double ey, double across, double nz) {
    double p1 = ex * x + ey * y;
    double p2 = ex * y - ey * x;
    double chord = Math.max(-r, Math.min(r, p1 + nz * z / across));
    double half = Math.sqrt((r - chord) * (r + chord));
    double depth = z / across;
    double chordAngle = StrictMath.atan2(half - p2, depth) + StrictMath.atan2(half + p2, depth);
    double contour = chordAngle - arc(p1, p2, z, across, nz, StrictMath.atan2(half, chord));
    return Math.max(0, contour / (2 * Math.PI * r * r));
  }

  /** The integral of n (x cross dx) / x2 over the arc from -beta to beta about the normal. */
  private double arc(double p1, double p2, double z, double across, double nz, double beta) {
    double aa = p1 * p1 + p2 * p2;
    double a = Math.sqrt(aa);
    double s = s(a, z);
    if (s == 0) {
      return 0;
    }
    double p = aa + z * z + r * r;
    double twoAr = 2 * a * r;
    double q = twoAr / (p + s);
    // 1 - q, without cancellation beside the rim.
    double restOfQ = (z * z + (a - r) * (a - r) + s) / (p + s);
    double cosMiddle = a == 0 ? 1 : p1 / a;
    double sinMiddle = a == 0 ? 0 : p2 / a;
    double middle = a == 0 ? 0 : StrictMath.atan2(p2, p1);
    double from = -beta - middle;
    double to = beta - middle;
    double halfFrom = StrictMath.sin(from / 2);
    double halfTo = StrictMath.sin(to / 2);
    double denominatorFrom = restOfQ + 2 * q * halfFrom * halfFrom;
    double denominatorTo = restOfQ + 2 * q * halfTo * halfTo;
    double overFrom = StrictMath.sin(from) / denominatorFrom;
    double overTo = StrictMath.sin(to) / denominatorTo;
    // atan(q u) / q at both ends: tends to u where the receiver is on the axis.
    double step = atanOver(q, overTo) - atanOver(q, overFrom);
    double turn = to - from;
    // Integrals of r - a cos, cos and sin over P - Q cos.
    double flat = (r * along(aa, z, p, s) * turn + (r * r - aa - z * z) / r * q * step) / s;
    double cosine = (q * turn + (1 + q * q) * step) / s;
    double cosTo = 1 - 2 * halfTo * halfTo;
    double cosFrom = 1 - 2 * halfFrom * halfFrom;
    double mean = z * z + (a - r) * (a - r) + twoAr * (halfFrom * halfFrom + halfTo * halfTo);
    double sine = (cosFrom - cosTo) / mean * atanhOver(twoAr * (cosFrom - cosTo) / (2 * mean));
    return nz * r * flat + across * z * r * (cosMiddle * cosine - sinMiddle * sine);
  }

  private static double atanOver(double q, double u) {
    double t = q * u;
    return Math.abs(t) < 1e-4 ? u * (1 - t * t / 3) : StrictMath.atan(t) / q;
  }

  private static double atanhOver(double y) {
    double yy = y * y;
    return yy < 1e-3
        ? 1 + yy * (1.0 / 3 + yy * (1.0 / 5 + yy * (1.0 / 7 + yy / 9)))
        : StrictMath.log((1 + y) / (1 - y)) / (2 * y);
  }

  /**
   * Half the sum of the light vector along the axis, uncut, and the scalar light. The scalar is the
   * solid angle over the area, an integral around the rim that is summed at equal steps, more of
   * them near the rim; within 5e-4 stop of quadrature from 0.1 m on.
   */
  @Override
  public double dome(double x, double y, double z, double nx, double ny, double nz) {
    if (z <= 0) {
      return 0;
    }
    double aa = x * x + y * y;
    double a = Math.sqrt(aa);
    double s = s(a, z);
    if (s == 0) {
      return 0;
    }
    double p = aa + z * z + r * r;
    double vector = -nz * along(aa, z, p, s) / s - (nx * x + ny * y) * 2 * z / ((p + s) * s);
    return Math.max(0, (vector + solidAngle(a, z) / (Math.PI * r * r)) / 2);
  }

  private double solidAngle(double a, double z) {
    double twoAr = 2 * a * r;
    double nearest = z * z + (a - r) * (a - r);
    // The steps' error falls as exp(-n tau), tau being how far the integrand's poles lie aside.
    double tau = a == 0 ? 12 : Math.sqrt((z * z + (a - r) * (a - r)) / (a * r));
    int half = (int) Math.min(512, 8 + Math.ceil(6 / tau));
    // Both halves of the rim are alike; each step turns the last one on by the same angle.
    double cosStep = StrictMath.cos(Math.PI / half);
    double sinStep = StrictMath.sin(Math.PI / half);
    double cos = 1;
    double sin = 0;
    double sum = 0;
    for (int i = 0; i <= half; i++) {
      double toRim = Math.sqrt(nearest + twoAr * (1 + cos));
      double share = toRim == 0 ? 0 : (r * r + a * r * cos) / (toRim * (toRim + z));
      sum += i == 0 || i == half ? share / 2 : share;
      double turned = cos * cosStep - sin * sinStep;
      sin = sin * cosStep + cos * sinStep;
      cos = Math.max(-1, turned);
    }
    return Math.max(0, sum * 2 * Math.PI / half);
  }
}
