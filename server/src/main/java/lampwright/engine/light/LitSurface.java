package lampwright.engine.light;

import lampwright.engine.beam.Even;
import lampwright.engine.unit.Bounds;

/**
 * A surface that takes light from a source and passes a share of it on as an even face: a wall or a
 * board off which light is bounced, a scrim through which it shines.
 *
 * <p>The surface is cut into equal patches; each is as bright as the light on it makes it in the
 * mean and shines in closed form. The patches are at most a sixteenth of the way to the source, and
 * 6 to 60 a side, so that even faces and standard reflectors come out within 0.01 stop of a plain
 * sum (tested off a wall of 3 by 2 m, source from 1.5 m, receiver from 0.5 m on). Light that goes
 * to and fro between surfaces, and gloss, are left out. What it sends out is never more than the
 * share of what it takes in.
 */
public final class LitSurface {

  private static final int FEWEST = 6;
  private static final int MOST = 60;
  private static final double PATCHES_A_DISTANCE = 16;

  private final Pose pose;
  private final PolygonField patch;
  private final SourceFrame frame;
  private final int columns;
  private final int rows;
  private final double columnWidth;
  private final double rowHeight;

  /** Far-away intensity of each patch over that of the source, row by row. */
  private final double[] intensities;

  private final double received;
  private final double share;

  private LitSurface(
      PlacedSource source,
      EmittingFace.Rectangle surface,
      Pose pose,
      double share,
      UnitVector litSide) {
    this.pose = pose;
    this.share = share;
    frame = SourceFrame.of(pose);
    double width = surface.width().value();
    double height = surface.height().value();
    double panel = nearest(source.pose().place(), width, height) / PATCHES_A_DISTANCE;
    columns = patches(width, panel);
    rows = patches(height, panel);
    columnWidth = width / columns;
    rowHeight = height / rows;
    double[] x = {columnWidth / 2, columnWidth / 2, -columnWidth / 2, -columnWidth / 2};
    double[] y = {-rowHeight / 2, rowHeight / 2, rowHeight / 2, -rowHeight / 2};
    patch = new PolygonField(Corners.of(x, y));
    intensities = new double[columns * rows];
    Receptor side = new Receptor.Flat(litSide);
    double area = columnWidth * rowHeight;
    double flux = 0;
    for (int i = 0; i < intensities.length; i++) {
      double light = meanOnPatch(source, side, middleX(i), middleY(i));
      flux += light * area;
      intensities[i] = share * light * area / new Even().solidAngleSr();
    }
    received = flux;
  }

  /**
   * Returns a surface that throws light back from the side that it faces.
   *
   * @param pose its middle and where it faces
   * @param reflectance share of the light that it throws back, 0 to 1: a white wall about 0.8
   */
  public static LitSurface bounce(
      PlacedSource source, EmittingFace.Rectangle surface, Pose pose, double reflectance) {
    Bounds.requireBetween("Reflectance", reflectance, "", 0, 1);
    return new LitSurface(source, surface, pose, reflectance, pose.axis());
  }

  /**
   * Returns a diffuser that shines on the side that it faces with what it takes from behind.
   *
   * @param pose its middle and where it shines
   * @param transmission share of the light that passes, 0 to 1
   */
  public static LitSurface scrim(
      PlacedSource source, EmittingFace.Rectangle surface, Pose pose, double transmission) {
    Bounds.requireBetween("Transmission", transmission, "", 0, 1);
    return new LitSurface(source, surface, pose, transmission, pose.axis().reversed());
  }

  /**
   * Returns the geometry factor at a point, in 1/m2: the exposure there by way of this surface is
   * the source's far-away intensity on its axis times it. A receptor that points at the source
   * points at this surface's middle.
   */
  public double geometryAt(Point at, Receptor receptor) {
    double x = frame.rightOf(at.x(), at.y(), at.z());
    double y = frame.upOf(at.x(), at.y(), at.z());
    double z = frame.beforeOf(at.x(), at.y(), at.z());
    if (z <= 0) {
      return 0;
    }
    UnitVector n =
        switch (receptor) {
          case Receptor.Flat flat -> flat.normal();
          case Receptor.Dome dome -> dome.axis();
          case Receptor.TowardSource _ -> UnitVector.between(at, pose.place());
        };
    double nx = frame.alongRight(n.x(), n.y(), n.z());
    double ny = frame.alongUp(n.x(), n.y(), n.z());
    double nz = frame.alongAxis(n.x(), n.y(), n.z());
    boolean dome = receptor instanceof Receptor.Dome;
    double sum = 0;
    for (int i = 0; i < intensities.length; i++) {
      double px = x - middleX(i);
      double py = y - middleY(i);
      sum +=
          intensities[i]
              * (dome ? patch.dome(px, py, z, nx, ny, nz) : patch.flat(px, py, z, nx, ny, nz));
    }
    return sum;
  }

  /** Returns the flux that it takes, over the source's intensity on its axis, in steradians. */
  public double receivedSr() {
    return received;
  }

  /** Returns the flux that it sends out, likewise: the share of {@link #receivedSr}. */
  public double emittedSr() {
    return share * received;
  }

  /** By two Gauss points each way, so that the patches' flux is right to the fourth order. */
  private double meanOnPatch(PlacedSource source, Receptor side, double x, double y) {
    double aside = columnWidth * GaussRule.TWO.node(0) / 2;
    double up = rowHeight * GaussRule.TWO.node(0) / 2;
    return (source.geometryAt(frame.toPlace(x - aside, y - up, 0), side)
            + source.geometryAt(frame.toPlace(x - aside, y + up, 0), side)
            + source.geometryAt(frame.toPlace(x + aside, y - up, 0), side)
            + source.geometryAt(frame.toPlace(x + aside, y + up, 0), side))
        / 4;
  }

  private double middleX(int index) {
    return (index % columns - (columns - 1) / 2.0) * columnWidth;
  }

  private double middleY(int index) {
    int row = index / columns;
    return (row - (rows - 1) / 2.0) * rowHeight;
  }

  private double nearest(Point place, double width, double height) {
    double x = frame.rightOf(place.x(), place.y(), place.z());
    double y = frame.upOf(place.x(), place.y(), place.z());
    double z = frame.beforeOf(place.x(), place.y(), place.z());
    double beside = Math.max(0, Math.abs(x) - width / 2);
    double above = Math.max(0, Math.abs(y) - height / 2);
    return Math.sqrt(beside * beside + above * above + z * z);
  }

  private static int patches(double length, double panel) {
    double wanted = panel == 0 ? MOST : Math.ceil(length / panel);
    return (int) Math.max(FEWEST, Math.min(MOST, wanted));
  }
}
