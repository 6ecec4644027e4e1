package lampwright.engine.light;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/**
 * A source's geometry factor by iterated quadrature of a general library (hipparchus), straight
 * from the definition: relative intensity times the receiver's cosine over distance squared,
 * averaged over the face. Shares no code with the engine. The outer range is split where the
 * receiver's horizon meets the outline, the inner one ends at the horizon.
 */
final class NumericSource {

  private static final int MOST = 200_000_000;

  private final EmittingFace face;
  private final double lobe;
  private final double[] place;
  private final double[] right;
  private final double[] up;
  private final double[] axis;
  private final double relative;

  /**
   * A face whose elements shine with the cosine to the power of the lobe; 1 is an even face.
   *
   * @param relative accuracy that both integrals aim at
   */
  NumericSource(EmittingFace face, double lobe, Pose pose, double relative) {
    this.face = face;
    this.lobe = lobe;
    this.place = vector(pose.place());
    this.axis = new double[] {pose.axis().x(), pose.axis().y(), pose.axis().z()};
    double[] vertical = normalized(combined(1, new double[] {0, 0, 1}, -axis[2], axis));
    double[] aside = cross(axis, vertical);
    double roll = pose.roll().value() / 180 * Math.PI;
    this.up = combined(Math.cos(roll), vertical, Math.sin(roll), aside);
    this.right = cross(axis, up);
    this.relative = relative;
  }

  /** The geometry factor of a flat receiver. */
  double flat(Point at, UnitVector normal) {
    double[] point = combined(1, vector(at), -1, place);
    double[] n = {normal.x(), normal.y(), normal.z()};
    // The receiver's height over an element (u, v): c0 + cu u + cv v must be above 0.
    double c0 = -dot(n, point);
    double cu = dot(n, right);
    double cv = dot(n, up);
    double px = dot(point, right);
    double py = dot(point, up);
    double pz = dot(point, axis);
    if (pz <= 0) {
      return 0;
    }
    DoubleUnaryOperator chord =
        u -> {
          double end = outline(u);
          double from = -end;
          double to = end;
          double above = c0 + cu * u;
          if (Math.abs(cv) < 1e-14) {
            to = above > 0 ? to : from;
          } else if (cv > 0) {
            from = Math.max(from, -above / cv);
          } else {
            to = Math.min(to, -above / cv);
          }
          return over(
              v -> {
                double dx = px - u;
                double dy = py - v;
                double squared = dx * dx + dy * dy + pz * pz;
                double distance = Math.sqrt(squared);
                double received = Math.max(0, above + cv * v) / distance;
                return Math.pow(pz / distance, lobe) * received / squared;
              },
              from,
              to,
              py);
        };
    double sum = 0;
    double before = Double.NaN;
    for (double end : breaks(c0, cu, cv)) {
      if (!Double.isNaN(before)) {
        sum += outer(chord, before, end, px);
      }
      before = end;
    }
    return sum / area();
  }

  /** Of a disc the outer range is an angle, so that its rim is no root at the ends. */
  private double outer(DoubleUnaryOperator chord, double from, double to, double middle) {
    if (face instanceof EmittingFace.Disc disc) {
      double r = disc.radius().value();
      double first = Math.asin(Math.max(-1, from / r));
      double last = Math.asin(Math.min(1, to / r));
      double at = Math.asin(Math.max(-1, Math.min(1, middle / r)));
      return over(t -> chord.applyAsDouble(r * Math.sin(t)) * r * Math.cos(t), first, last, at);
    }
    return over(chord, from, to, middle);
  }

  /** Split at the foot of the receiver, where the integrand peaks. */
  private double over(DoubleUnaryOperator f, double from, double to, double middle) {
    if (middle > from && middle < to) {
      return plain(f, from, middle) + plain(f, middle, to);
    }
    return plain(f, from, to);
  }

  private double plain(DoubleUnaryOperator f, double from, double to) {
    // Each integral has its own integrator: they keep state, and one runs inside the other.
    return to - from < 1e-14
        ? 0
        : new IterativeLegendreGaussIntegrator(7, relative, 1e-13, 2, 24)
            .integrate(MOST, f::applyAsDouble, from, to);
  }

  private SortedSet<Double> breaks(double c0, double cu, double cv) {
    SortedSet<Double> breaks = new TreeSet<>();
    double end = width();
    breaks.add(-end);
    breaks.add(end);
    if (face instanceof EmittingFace.Octagon octagon) {
      double near = octagon.acrossFlats().value() / 2 * Math.tan(Math.PI / 8);
      breaks.add(-near);
      breaks.add(near);
    }
    // Where the horizon meets the outline: a sign change of its height there, by bisection.
    SortedSet<Double> fixed = new TreeSet<>(breaks);
    for (int side = -1; side <= 1; side += 2) {
      int sign = side;
      DoubleUnaryOperator height = u -> c0 + cu * u + cv * sign * outline(u);
      int steps = 200;
      for (int i = 0; i < steps; i++) {
        double a = -end + 2 * end * i / steps;
        double b = -end + 2 * end * (i + 1) / steps;
        if (height.applyAsDouble(a) * height.applyAsDouble(b) < 0) {
          for (int k = 0; k < 60; k++) {
            double m = (a + b) / 2;
            if (height.applyAsDouble(a) * height.applyAsDouble(m) <= 0) {
              b = m;
            } else {
              a = m;
            }
          }
          fixed.add(a);
        }
      }
    }
    return fixed;
  }

  private double width() {
    return switch (face) {
      case EmittingFace.Disc disc -> disc.radius().value();
      case EmittingFace.Rectangle rectangle -> rectangle.width().value() / 2;
      case EmittingFace.Octagon octagon -> octagon.acrossFlats().value() / 2;
      case EmittingFace.PointSource _ -> throw new IllegalStateException("a point has no width");
    };
  }

  private double outline(double u) {
    return switch (face) {
      case EmittingFace.Disc disc ->
          Math.sqrt(Math.max(0, disc.radius().value() * disc.radius().value() - u * u));
      case EmittingFace.Rectangle rectangle -> rectangle.height().value() / 2;
      case EmittingFace.Octagon octagon -> {
        double flat = octagon.acrossFlats().value() / 2;
        yield Math.min(flat, flat * Math.sqrt(2) - Math.abs(u));
      }
      case EmittingFace.PointSource _ -> throw new IllegalStateException("a point has no outline");
    };
  }

  private double area() {
    return switch (face) {
      case EmittingFace.Disc disc -> Math.PI * disc.radius().value() * disc.radius().value();
      case EmittingFace.Rectangle rectangle ->
          rectangle.width().value() * rectangle.height().value();
      case EmittingFace.Octagon octagon -> {
        double flats = octagon.acrossFlats().value();
        yield 2 * (Math.sqrt(2) - 1) * flats * flats;
      }
      case EmittingFace.PointSource _ -> throw new IllegalStateException("a point has no area");
    };
  }

  private static double[] vector(Point point) {
    return new double[] {point.x(), point.y(), point.z()};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] combined(double p, double[] a, double q, double[] b) {
    return new double[] {p * a[0] + q * b[0], p * a[1] + q * b[1], p * a[2] + q * b[2]};
  }

  private static double[] normalized(double[] a) {
    return combined(1 / Math.sqrt(dot(a, a)), a, 0, a);
  }
}
