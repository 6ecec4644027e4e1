package lampwright.drawing;

import java.util.Optional;

/** An upright rectangle of a drawing, in units of its view box. */
record Box(double left, double top, double right, double bottom) {

  static Box around(Spot centre, double halfWidth, double halfHeight) {
    return new Box(
        centre.x() - halfWidth,
        centre.y() - halfHeight,
        centre.x() + halfWidth,
        centre.y() + halfHeight);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  Spot centre() {
    return new Spot((left + right) / 2, (top + bottom) / 2);
  }

  Strokes outline() {
    return new Strokes()
        .from(new Spot(left, top))
        .to(new Spot(right, top))
        .to(new Spot(right, bottom))
        .to(new Spot(left, bottom))
        .close();
  }

  /** This box, wider by so many units on every side; minus makes it smaller. */
  Box grown(double units) {
    return new Box(left - units, top - units, right + units, bottom + units);
  }

  boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean contains(Box other) {
    return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
  }

  boolean contains(Spot spot) {
    return left <= spot.x() && spot.x() <= right && top <= spot.y() && spot.y() <= bottom;
  }

  /** The spot of this box that is nearest to the given one. */
  Spot nearestTo(Spot spot) {
    return new Spot(Math.clamp(spot.x(), left, right), Math.clamp(spot.y(), top, bottom));
  }

  boolean touches(Segment line) {
    return enters(line) <= leaves(line);
  }

  /** The part of a line that lies within this box (Liang and Barsky's way of clipping). */
  Optional<Segment> clip(Segment line) {
    double enters = enters(line);
    double leaves = leaves(line);
    return enters > leaves
        ? Optional.empty()
        : Optional.of(new Segment(line.at(enters), line.at(leaves)));
  }

  /** The share of a line's way at which it has come in by every side; infinite where it passes. */
  private double enters(Segment line) {
    Spot from = line.from();
    double across = line.to().x() - from.x();
    double down = line.to().y() - from.y();
    double share = enters(0, -across, from.x() - left);
    share = enters(share, across, right - from.x());
    share = enters(share, -down, from.y() - top);
    return enters(share, down, bottom - from.y());
  }

  private static double enters(double before, double toward, double room) {
    if (toward == 0) {
      return room < 0 ? Double.POSITIVE_INFINITY : before;
    }
    return toward < 0 ? Math.max(before, room / toward) : before;
  }

  /** The share of a line's way at which it first goes out by a side, at most 1. */
  private double leaves(Segment line) {
    Spot from = line.from();
    double across = line.to().x() - from.x();
    double down = line.to().y() - from.y();
    double share = leaves(1, -across, from.x() - left);
    share = leaves(share, across, right - from.x());
    share = leaves(share, -down, from.y() - top);
    return leaves(share, down, bottom - from.y());
  }

  private static double leaves(double before, double toward, double room) {
    return toward > 0 ? Math.min(before, room / toward) : before;
  }
}
