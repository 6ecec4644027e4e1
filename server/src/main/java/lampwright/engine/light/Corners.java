package lampwright.engine.light;

/**
 * The corners of a flat convex face about its middle, from the source's right toward its up.
 *
 * <p>Right, up and axis are a left-handed frame. Cross products inside it are those of the mirrored
 * scene, which is lit alike.
 */
final class Corners {

  private final double[] xM;
  private final double[] yM;
  private final double area;
  private final double radius;

  private Corners(double[] xM, double[] yM) {
    this.xM = xM;
    this.yM = yM;
    double twice = 0;
    double farthest = 0;
    for (int i = 0; i < xM.length; i++) {
      int j = (i + 1) % xM.length;
      // In two steps: compiled to JavaScript, a sum of a difference loses its brackets.
      twice += xM[i] * yM[j];
      twice -= yM[i] * xM[j];
      farthest = Math.max(farthest, Math.sqrt(xM[i] * xM[i] + yM[i] * yM[i]));
    }
    area = twice / 2;
    radius = farthest;
  }

  static Corners of(double[] xM, double[] yM) {
    return new Corners(xM, yM);
  }

  static Corners of(EmittingFace.Rectangle rectangle) {
    double w = rectangle.width().value() / 2;
    double h = rectangle.height().value() / 2;
    return new Corners(new double[] {w, w, -w, -w}, new double[] {-h, h, h, -h});
  }

  static Corners of(EmittingFace.Octagon octagon) {
    double far = octagon.acrossFlats().value() / 2;
    double near = octagon.side().value() / 2;
    return new Corners(
        new double[] {far, far, near, -near, -far, -far, -near, near},
        new double[] {-near, near, far, far, near, -near, -far, -far});
  }

  int count() {
    return xM.length;
  }

  double x(int corner) {
    return xM[corner];
  }

  double y(int corner) {
    return yM[corner];
  }

  double area() {
    return area;
  }

  /** How far the farthest corner is from the middle. */
  double radius() {
    return radius;
  }
}
