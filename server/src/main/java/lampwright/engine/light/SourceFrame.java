package lampwright.engine.light;

/**
 * A source's own axes: x to its right and y up, both in the face and as seen from behind the
 * source, z along its axis; the middle of the face is the origin. Primitives for hot loops, all in
 * metres.
 */
public final class SourceFrame {

  /** Squared share of an axis in the ground plane below which it counts as vertical. */
  private static final double VERTICAL = 1e-18;

  private final double placeX;
  private final double placeY;
  private final double placeZ;
  private final double rightX;
  private final double rightY;
  private final double rightZ;
  private final double upX;
  private final double upY;
  private final double upZ;
  private final double axisX;
  private final double axisY;
  private final double axisZ;

  private SourceFrame(Pose pose) {
    placeX = pose.place().x();
    placeY = pose.place().y();
    placeZ = pose.place().z();
    axisX = pose.axis().x();
    axisY = pose.axis().y();
    axisZ = pose.axis().z();
    double ground = axisX * axisX + axisY * axisY;
    double root = Math.sqrt(ground);
    boolean vertical = ground < VERTICAL;
    // The vertical less its part along the axis, at length one.
    double plainUpX = vertical ? 0 : -axisZ * axisX / root;
    double plainUpY = vertical ? 1 : -axisZ * axisY / root;
    double plainUpZ = vertical ? 0 : root;
    double plainRightX = axisY * plainUpZ - axisZ * plainUpY;
    double plainRightY = axisZ * plainUpX - axisX * plainUpZ;
    double plainRightZ = axisX * plainUpY - axisY * plainUpX;
    double cos = StrictMath.cos(pose.roll().toRadians());
    double sin = StrictMath.sin(pose.roll().toRadians());
    upX = plainUpX * cos + plainRightX * sin;
    upY = plainUpY * cos + plainRightY * sin;
    upZ = plainUpZ * cos + plainRightZ * sin;
    rightX = plainRightX * cos - plainUpX * sin;
    rightY = plainRightY * cos - plainUpY * sin;
    rightZ = plainRightZ * cos - plainUpZ * sin;
  }

  /** Returns the axes of a source that stands so. */
  public static SourceFrame of(Pose pose) {
    return new SourceFrame(pose);
  }

  /** Returns how far a place lies to the source's right. */
  public double rightOf(double xM, double yM, double zM) {
    return alongRight(xM - placeX, yM - placeY, zM - placeZ);
  }

  /** Returns how far a place lies above the source's middle, in the source's own sense of up. */
  public double upOf(double xM, double yM, double zM) {
    return alongUp(xM - placeX, yM - placeY, zM - placeZ);
  }

  /** Returns how far a place lies before the face; minus is behind it. */
  public double beforeOf(double xM, double yM, double zM) {
    return alongAxis(xM - placeX, yM - placeY, zM - placeZ);
  }

  /** Returns the part of a direction along the source's right. */
  public double alongRight(double x, double y, double z) {
    return x * rightX + y * rightY + z * rightZ;
  }

  /** Returns the part of a direction along the source's up. */
  public double alongUp(double x, double y, double z) {
    return x * upX + y * upY + z * upZ;
  }

  /** Returns the part of a direction along the source's axis. */
  public double alongAxis(double x, double y, double z) {
    return x * axisX + y * axisY + z * axisZ;
  }

  /** Returns the place of a point of the frame, such as a corner of the face. */
  Point toPlace(double rightM, double upM, double beforeM) {
    return new Point(
        placeX + rightM * rightX + upM * upX + beforeM * axisX,
        placeY + rightM * rightY + upM * upY + beforeM * axisY,
        placeZ + rightM * rightZ + upM * upZ + beforeM * axisZ);
  }
}
