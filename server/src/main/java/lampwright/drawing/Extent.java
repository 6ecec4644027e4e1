package lampwright.drawing;

import java.util.List;
import lampwright.engine.light.Point;

/**
 * The piece of ground that a plan shows, in metres from the hit mark.
 *
 * @param left metres to camera right of its left edge, usually negative
 * @param near metres away from the camera of its near edge, the lower one
 */
record Extent(double left, double near, double right, double far) {

  /** A thing this many times farther off than all nearer ones stands at the border instead. */
  private static final double FAR_OFF = 2.2;

  /** What lies within this distance of the hit mark is never far off. */
  private static final double ALWAYS_NEAR_M = 3;

  /** The ends of a long wall may go this much farther out than what stands before it. */
  private static final double WALL_REACH = 1.5;

  /** The hit mark has at least this much ground round it, less the margin. */
  private static final double ROUND_HIT_MARK_M = 0.8;

  private static final double LEAST_MARGIN_M = 0.55;
  private static final double LEAST_SIDE_M = 3;

  /** An elevation shows at least a standing person's height. */
  private static final double LEAST_HEIGHT_M = 2;

  /** Room under the ground for the names of marks. */
  private static final double UNDER_GROUND_M = 0.3;

  private static final double UNDER_GROUND_SHARE = 0.07;
  private static final double FLATTEST_UPRIGHT = 0.42;

  /** Height by width; beyond these a drawing is a strip that no page has room for. */
  private static final double FLATTEST = 0.66;

  private static final double TALLEST = 1.02;

  /**
   * The ground that shows all places but those far off.
   *
   * @param places what must be seen, with the hit mark among it or not
   * @param wallEnds what should be seen if it is not much farther out
   * @param marginShare ground left free round them, as a share of the longer side
   */
  static Extent around(List<Point> places, List<Point> wallEnds, double marginShare) {
    double reach = reach(places);
    double left = -ROUND_HIT_MARK_M;
    double near = -ROUND_HIT_MARK_M;
    double right = ROUND_HIT_MARK_M;
    double far = ROUND_HIT_MARK_M;
    for (int i = 0; i < places.size() + wallEnds.size(); i++) {
      boolean wall = i >= places.size();
      Point point = wall ? wallEnds.get(i - places.size()) : places.get(i);
      if (fromHitMark(point) <= reach * (wall ? WALL_REACH : 1)) {
        left = Math.min(left, point.x());
        right = Math.max(right, point.x());
        near = Math.min(near, point.y());
        far = Math.max(far, point.y());
      }
    }
    double margin = Math.max(LEAST_MARGIN_M, marginShare * Math.max(right - left, far - near));
    return new Extent(left - margin, near - margin, right + margin, far + margin).readable();
  }

  /**
   * The piece of an upright plane that shows all places but those far off, from a little below the
   * ground.
   *
   * @param ends corners of faces and walls, seen if they are not much farther out
   */
  static Extent upright(View view, List<Point> places, List<Point> ends, double marginShare) {
    double reach = reach(places);
    double left = -ROUND_HIT_MARK_M;
    double right = ROUND_HIT_MARK_M;
    double low = 0;
    double high = LEAST_HEIGHT_M;
    for (int i = 0; i < places.size() + ends.size(); i++) {
      boolean end = i >= places.size();
      Point point = end ? ends.get(i - places.size()) : places.get(i);
      if (fromHitMark(point) <= reach * (end ? WALL_REACH : 1)) {
        left = Math.min(left, view.along(point));
        right = Math.max(right, view.along(point));
        low = Math.min(low, view.up(point));
        high = Math.max(high, view.up(point));
      }
    }
    double margin = Math.max(LEAST_MARGIN_M, marginShare * Math.max(right - left, high - low));
    double width = Math.max(LEAST_SIDE_M, right - left + 2 * margin);
    double below = low - Math.max(UNDER_GROUND_M, UNDER_GROUND_SHARE * width);
    double height = Math.max(high + margin - below, width * FLATTEST_UPRIGHT);
    width = Math.max(width, height / TALLEST);
    double middle = (left + right) / 2;
    return new Extent(middle - width / 2, below, middle + width / 2, below + height);
  }

  static double fromHitMark(Point point) {
    return Math.sqrt(point.x() * point.x() + point.y() * point.y());
  }

  /** Walks outward from the hit mark and stops where a wide gap begins. */
  private static double reach(List<Point> places) {
    double reach = ALWAYS_NEAR_M;
    for (double distance : places.stream().mapToDouble(Extent::fromHitMark).sorted().toArray()) {
      if (distance > FAR_OFF * reach) {
        break;
      }
      reach = Math.max(reach, distance);
    }
    return reach;
  }

  private Extent readable() {
    double width = Math.max(LEAST_SIDE_M, Math.max(width(), height() / TALLEST));
    double height = Math.max(height(), width * FLATTEST);
    double middleX = (left + right) / 2;
    double middleY = (near + far) / 2;
    return new Extent(
        middleX - width / 2, middleY - height / 2, middleX + width / 2, middleY + height / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return far - near;
  }
}
