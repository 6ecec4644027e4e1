package lampwright.setup.figures;

import java.util.List;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.setup.Subject;

/** The way that a subject moves along its marks, and where on it the hit mark is. */
final class SubjectWay {

  /** Marks nearer to each other than this give no direction, in metres. */
  private static final double SAME_PLACE_M = 1e-6;

  private final List<Subject.Mark> marks;
  private final int hit;

  /** The mark nearest to where the subject is in the picture is the hit mark. */
  SubjectWay(Subject subject) {
    this.marks = subject.path();
    int nearest = 0;
    for (int i = 1; i < marks.size(); i++) {
      if (distance(subject, i) < distance(subject, nearest)) {
        nearest = i;
      }
    }
    this.hit = nearest;
  }

  private double distance(Subject subject, int mark) {
    return marks.get(mark).at().distanceTo(subject.place()).value();
  }

  /** Whether the marks give a direction at the hit mark. */
  boolean hasDirection() {
    return marks.size() > 1
        && (lengthTo(hit - 1) > SAME_PLACE_M || lengthTo(hit + 1) > SAME_PLACE_M);
  }

  private double lengthTo(int neighbour) {
    return neighbour < 0 || neighbour >= marks.size()
        ? 0
        : marks.get(hit).at().distanceTo(marks.get(neighbour).at()).value();
  }

  /** Which mark it is. */
  int hit() {
    return hit;
  }

  Point hitMark() {
    return marks.get(hit).at();
  }

  /** The direction through the hit mark: half way between that of coming and that of leaving. */
  UnitVector direction() {
    Point here = hitMark();
    boolean comes = lengthTo(hit - 1) > SAME_PLACE_M;
    boolean leaves = lengthTo(hit + 1) > SAME_PLACE_M;
    if (!comes) {
      return UnitVector.between(here, marks.get(hit + 1).at());
    }
    UnitVector coming = UnitVector.between(marks.get(hit - 1).at(), here);
    if (!leaves) {
      return coming;
    }
    UnitVector leaving = UnitVector.between(here, marks.get(hit + 1).at());
    double x = coming.x() + leaving.x();
    double y = coming.y() + leaving.y();
    double z = coming.z() + leaving.z();
    // A subject that turns back on the mark is seen as it comes.
    return x * x + y * y + z * z < SAME_PLACE_M ? coming : UnitVector.of(x, y, z);
  }

  /** Where the way leaves the sharp depths, from the hit mark on. */
  record Sharp(double metres, boolean pathEnds) {}

  /**
   * How far the subject goes from the hit mark before its depth leaves the bounds.
   *
   * @param step 1 onwards, -1 back
   * @param lift what a mark's depth is raised by for the part of the subject that is looked at
   */
  Sharp sharpFrom(int step, Point camera, UnitVector axis, double lift, double near, double far) {
    double gone = 0;
    for (int i = hit; i + step >= 0 && i + step < marks.size(); i += step) {
      Point from = marks.get(i).at();
      Point to = marks.get(i + step).at();
      double length = from.distanceTo(to).value();
      double start = depth(camera, axis, from) + lift;
      double end = depth(camera, axis, to) + lift;
      if (start < near || start > far) {
        return new Sharp(gone, false);
      }
      if (end < near || end > far) {
        double bound = end < near ? near : far;
        return new Sharp(gone + length * (bound - start) / (end - start), false);
      }
      gone += length;
    }
    return new Sharp(gone, true);
  }

  /** Metres along the camera's axis. */
  static double depth(Point camera, UnitVector axis, Point at) {
    return (at.x() - camera.x()) * axis.x()
        + (at.y() - camera.y()) * axis.y()
        + (at.z() - camera.z()) * axis.z();
  }
}
