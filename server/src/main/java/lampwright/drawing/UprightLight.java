package lampwright.drawing;

import java.util.List;
import lampwright.engine.light.Point;

/** A light as an elevation sees it: its face projected, level and without perspective. */
record UprightLight(Sheet sheet, LightOnPlan on) {

  /**
   * Where less than this share of the aim lies in the drawing's plane, one sees the face rather
   * from the front or behind than from its edge: the cosine of 50 degrees.
   */
  private static final double STEEP_SHARE = 0.643;

  Point place() {
    return on.light().place();
  }

  Spot spot() {
    return sheet.spot(place());
  }

  Spot foot() {
    return sheet.spot(new Point(place().x(), place().y(), 0));
  }

  boolean isShown() {
    return sheet.shows(place());
  }

  /** The part of the aim, of length one, that lies in the drawing's plane. */
  private Spot aimInPlane() {
    Point axis = on.axis();
    return new Spot(sheet.view().along(axis), -sheet.view().up(axis));
  }

  boolean isSteep() {
    return aimInPlane().length() < STEEP_SHARE;
  }

  /** Which way it points on the sheet; down where it points at or from the eye. */
  Spot heading() {
    Spot way = aimInPlane();
    return way.length() < 1e-6 ? new Spot(0, 1) : way.times(1 / way.length());
  }

  List<Spot> outline() {
    return on.faceOutline().stream().map(sheet::spot).toList();
  }

  Segment aim() {
    return new Segment(spot(), sheet.spot(on.light().target().at()));
  }

  /** How far the face reaches from its middle, against the way that it points. */
  double depth() {
    Spot middle = spot();
    Spot heading = heading();
    double depth = 0;
    for (Spot corner : outline()) {
      Spot way = corner.minus(middle);
      depth = Math.max(depth, Math.abs(way.x() * heading.x() + way.y() * heading.y()));
    }
    return depth;
  }

  Box box() {
    Spot middle = spot();
    double halfWidth = 3;
    double halfHeight = 3;
    for (Spot corner : outline()) {
      halfWidth = Math.max(halfWidth, Math.abs(corner.x() - middle.x()));
      halfHeight = Math.max(halfHeight, Math.abs(corner.y() - middle.y()));
    }
    return Box.around(middle, halfWidth, halfHeight);
  }
}
