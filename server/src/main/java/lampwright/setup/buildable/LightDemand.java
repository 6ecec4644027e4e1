package lampwright.setup.buildable;

import java.util.List;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.SourceFrame;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Stops;
import lampwright.gear.Gel;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;

/**
 * What one light of a setup asks of any kit.
 *
 * @param known whether its level is known
 * @param wantedStops its level in the picture against the shooting exposure
 * @param leastRadiusM of a disc that looks half as large as its face
 * @param mostRadiusM of a disc that looks twice as large
 * @param ray how its target lies before the face
 */
record LightDemand(
    boolean known,
    double wantedStops,
    double distanceM,
    double heightM,
    double leastRadiusM,
    double mostRadiusM,
    int heads,
    int pops,
    List<Gel> gels,
    Ray ray) {

  /** Below this size in degrees a face counts as so large, as the search has it. */
  private static final double LEAST_SIZE_DEG = 1;

  /** What doubles leave over where a size is just twice or half the other. */
  private static final double ROUNDING = 5e-10;

  /** A receiver's direction or place is off the axis by this share at least. */
  private static final double STRAIGHT = 1e-9;

  /**
   * A target in the axes of a face, with the receiver's normal.
   *
   * @param straight whether it lies on the axis and is metered toward the face
   */
  record Ray(double x, double y, double z, double nx, double ny, double nz, boolean straight) {

    static Ray of(LightAtTarget light) {
      SourceFrame frame = SourceFrame.of(light.pose());
      Point at = light.at();
      double x = frame.rightOf(at.x(), at.y(), at.z());
      double y = frame.upOf(at.x(), at.y(), at.z());
      double z = frame.beforeOf(at.x(), at.y(), at.z());
      UnitVector normal =
          switch (light.receptor()) {
            case Receptor.TowardSource _ -> UnitVector.between(at, light.pose().place());
            case Receptor.Flat flat -> flat.normal();
            case Receptor.Dome dome -> dome.axis();
          };
      double nx = frame.alongRight(normal.x(), normal.y(), normal.z());
      double ny = frame.alongUp(normal.x(), normal.y(), normal.z());
      double nz = frame.alongAxis(normal.x(), normal.y(), normal.z());
      double aside = Math.max(Math.max(Math.abs(x), Math.abs(y)) / Math.abs(z), -z);
      boolean facing = Math.max(Math.abs(nx), Math.abs(ny)) < STRAIGHT && nz < 0;
      return new Ray(x, y, z, nx, ny, nz, aside < STRAIGHT && facing);
    }
  }

  static LightDemand of(LightFigures figures, Figures all) {
    double distance = figures.distance().value();
    double size = Math.max(LEAST_SIZE_DEG, figures.angularSize().value());
    double least = size / 2 <= LEAST_SIZE_DEG ? 0 : radius(size / 2, distance);
    double most = 2 * size >= 180 ? Double.POSITIVE_INFINITY : radius(2 * size, distance);
    double wanted =
        figures
            .inPicture()
            .map(level -> Stops.ofRatio(level.value() / all.shootingExposure().value()).value())
            .orElse(0.0);
    return new LightDemand(
        figures.level().isPresent(),
        wanted,
        distance,
        figures.light().place().z(),
        least * (1 - ROUNDING),
        most * (1 + ROUNDING),
        figures.light().heads(),
        figures.light().pops(),
        figures.light().gels(),
        Ray.of(figures.atTarget()));
  }

  private static double radius(double sizeDeg, double distance) {
    double half = sizeDeg / 2 * (StrictMath.PI / 180);
    return distance * StrictMath.sin(half) / StrictMath.cos(half);
  }
}
