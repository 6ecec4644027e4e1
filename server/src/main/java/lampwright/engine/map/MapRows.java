package lampwright.engine.map;

import lampwright.engine.beam.TabledLobe;
import lampwright.engine.light.DiscField;
import lampwright.engine.light.LightField;
import lampwright.engine.light.PointField;
import lampwright.engine.light.PolygonField;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.light.UnitVector;

/**
 * Fills a map with one light after the other, row by row, in the light's own frame; not for two
 * threads at once.
 */
final class MapRows {

  private static final double NEAREST_SQUARED = LightField.NEAREST_M * LightField.NEAREST_M;

  private final MapPlane plane;
  private final Receptor receptor;

  /** The receiver's direction in the light's frame; not used where it turns to each source. */
  private double nx;

  private double ny;
  private double nz;

  /** The first point of the row in the light's frame, and the way to the next point. */
  private double startX;

  private double startY;
  private double startZ;
  private double stepX;
  private double stepY;
  private double stepZ;

  MapRows(MapPlane plane, Receptor receptor) {
    this.plane = plane;
    this.receptor = receptor;
  }

  /** Writes peak times geometry for each point of the map, row by row, from the offset on. */
  void fill(LightField field, SourceFrame frame, double peakCdS, double[] exposures, int offset) {
    turn(frame);
    UnitVector along = plane.along();
    double step = plane.length().value() / (plane.columns() - 1);
    stepX = step * frame.alongRight(along.x(), along.y(), along.z());
    stepY = step * frame.alongUp(along.x(), along.y(), along.z());
    stepZ = step * frame.alongAxis(along.x(), along.y(), along.z());
    boolean dome = receptor instanceof Receptor.Dome;
    boolean toward = receptor instanceof Receptor.TowardSource;
    for (int row = 0; row < plane.rows(); row++) {
      start(frame, row);
      int from = offset + row * plane.columns();
      if (dome) {
        domeRow(field, peakCdS, exposures, from);
      } else if (field instanceof PolygonField polygon) {
        polygonRow(polygon, toward, peakCdS, exposures, from);
      } else if (field instanceof DiscField disc) {
        discRow(disc, toward, peakCdS, exposures, from);
      } else if (field instanceof PointField point && point.spread() instanceof TabledLobe lobe) {
        lobeRow(point, lobe, toward, peakCdS, exposures, from);
      } else {
        anyRow(field, toward, peakCdS, exposures, from);
      }
    }
  }

  private void turn(SourceFrame frame) {
    switch (receptor) {
      case Receptor.Flat flat -> turn(frame, flat.normal());
      case Receptor.Dome dome -> turn(frame, dome.axis());
      case Receptor.TowardSource _ -> {
        // Turned at each point.
      }
    }
  }

  private void turn(SourceFrame frame, UnitVector n) {
    nx = frame.alongRight(n.x(), n.y(), n.z());
    ny = frame.alongUp(n.x(), n.y(), n.z());
    nz = frame.alongAxis(n.x(), n.y(), n.z());
  }

  private void start(SourceFrame frame, int row) {
    double way = plane.height().value() * row / (plane.rows() - 1);
    double x = plane.corner().x() + way * plane.up().x();
    double y = plane.corner().y() + way * plane.up().y();
    double z = plane.corner().z() + way * plane.up().z();
    startX = frame.rightOf(x, y, z);
    startY = frame.upOf(x, y, z);
    startZ = frame.beforeOf(x, y, z);
  }

  private void domeRow(LightField field, double peakCdS, double[] exposures, int from) {
    for (int i = 0; i < plane.columns(); i++) {
      exposures[from + i] =
          peakCdS
              * field.dome(startX + i * stepX, startY + i * stepY, startZ + i * stepZ, nx, ny, nz);
    }
  }

  private void anyRow(
      LightField field, boolean toward, double peakCdS, double[] exposures, int from) {
    for (int i = 0; i < plane.columns(); i++) {
      double x = startX + i * stepX;
      double y = startY + i * stepY;
      double z = startZ + i * stepZ;
      exposures[from + i] = peakCdS * exact(field, toward, x, y, z);
    }
  }

  private double exact(LightField field, boolean toward, double x, double y, double z) {
    return toward ? field.towardSource(x, y, z) : field.flat(x, y, z, nx, ny, nz);
  }

  private void lobeRow(
      PointField field,
      TabledLobe lobe,
      boolean toward,
      double peakCdS,
      double[] exposures,
      int from) {
    for (int i = 0; i < plane.columns(); i++) {
      double x = startX + i * stepX;
      double y = startY + i * stepY;
      double z = startZ + i * stepZ;
      double squared = x * x + y * y + z * z;
      if (squared < NEAREST_SQUARED) {
        exposures[from + i] = peakCdS * exact(field, toward, x, y, z);
        continue;
      }
      double over = 1 / Math.sqrt(squared);
      double received = toward ? 1 : -(nx * x + ny * y + nz * z) * over;
      exposures[from + i] =
          z <= 0 || received <= 0
              ? 0
              : peakCdS * lobe.relativeAt(z * over, 0) * received * over * over;
    }
  }

  /** The closed form of DiscField where the horizon does not cut; see there. */
  private void discRow(
      DiscField field, boolean toward, double peakCdS, double[] exposures, int from) {
    double r = field.radiusM();
    double rr = r * r;
    double across = toward ? 0 : r * Math.sqrt(nx * nx + ny * ny);
    for (int i = 0; i < plane.columns(); i++) {
      double x = startX + i * stepX;
      double y = startY + i * stepY;
      double z = startZ + i * stepZ;
      double aa = x * x + y * y;
      double zz = z * z;
      double squared = aa + zz;
      // The middle's height over the receiver's horizon; pointed at it, its distance.
      double above = toward ? Math.sqrt(squared) : -(nx * x + ny * y + nz * z);
      if (z <= 0 || (!toward && above <= -across)) {
        exposures[from + i] = 0;
      } else if (above <= (toward ? r : across)) {
        exposures[from + i] = peakCdS * exact(field, toward, x, y, z);
      } else {
        double inside = aa - rr;
        double s = Math.sqrt(inside * inside + zz * (zz + 2 * (aa + rr)));
        double outside = inside - zz;
        double rest = outside > 0 ? 4 * aa * zz / (s + outside) : s - outside;
        double over = 1 / ((s + squared + rr) * s);
        exposures[from + i] =
            toward
                ? peakCdS * (z * rest + 2 * z * aa) * over / above
                : peakCdS * Math.max(0, -nz * rest - 2 * z * (nx * x + ny * y)) * over;
      }
    }
  }

  private boolean isCut(PolygonField field, double x, double y, double z) {
    for (int i = 0; i < field.count(); i++) {
      if (nx * (field.cornerX(i) - x) + ny * (field.cornerY(i) - y) - nz * z < 0) {
        return true;
      }
    }
    return false;
  }

  /** The contour formula of PolygonField where the horizon does not cut; see there. */
  private void polygonRow(
      PolygonField field, boolean toward, double peakCdS, double[] exposures, int from) {
    int count = field.count();
    double radius = field.radiusM();
    double across = toward ? 0 : radius * Math.sqrt(nx * nx + ny * ny);
    double factor = peakCdS * field.perTwiceArea();
    double lastX = field.cornerX(count - 1);
    double lastY = field.cornerY(count - 1);
    for (int i = 0; i < plane.columns(); i++) {
      double x = startX + i * stepX;
      double y = startY + i * stepY;
      double z = startZ + i * stepZ;
      double zz = z * z;
      double above = toward ? Math.sqrt(x * x + y * y + zz) : -(nx * x + ny * y + nz * z);
      if (z <= 0 || (!toward && above <= -across)) {
        exposures[from + i] = 0;
        continue;
      }
      if (above <= (toward ? radius : across) && (toward || isCut(field, x, y, z))) {
        exposures[from + i] = peakCdS * exact(field, toward, x, y, z);
        continue;
      }
      double vx = 0;
      double vy = 0;
      double vz = 0;
      double ax = lastX - x;
      double ay = lastY - y;
      double overA = 1 / Math.sqrt(ax * ax + ay * ay + zz);
      for (int corner = 0; corner < count; corner++) {
        double bx = field.cornerX(corner) - x;
        double by = field.cornerY(corner) - y;
        double overB = 1 / Math.sqrt(bx * bx + by * by + zz);
        double over = overA * overB;
        double angle = SideAngle.overSine((ax * bx + ay * by + zz) * over) * over;
        double wayX = bx - ax;
        double wayY = by - ay;
        vx += angle * wayY;
        vy -= angle * wayX;
        vz += angle * (ax * wayY - ay * wayX);
        ax = bx;
        ay = by;
        overA = overB;
      }
      double sum =
          toward ? (z * (x * vx + y * vy) + z * vz) / above : -(z * (nx * vx + ny * vy) + nz * vz);
      exposures[from + i] = Math.max(0, sum * factor);
    }
  }
}
