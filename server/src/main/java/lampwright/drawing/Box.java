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
    return clip(line).isPresent();
  }

  /** The part of a line that lies within this box (Liang and Barsky's way of clipping). */
  Optional<Segment> clip(Segment line) {
    Spot way = line.to().minus(line.from());
    double[] directions = {-way.x(), way.x(), -way.y(), way.y()};
    double[] rooms = {
      line.from().x() - left,
      right - line.from().x(),
      line.from().y() - top,
      bottom - line.from().y()
    };
    double enters = 0;
    double leaves = 1;
    for (int side = 0; side < 4; side++) {
      if (directions[side] == 0) {
        if (rooms[side] < 0) {
          return Optional.empty();
        }
      } else if (directions[side] < 0) {
        enters = Math.max(enters, rooms[side] / directions[side]);
      } else {
        leaves = Math.min(leaves, rooms[side] / directions[side]);
      }
    }
    return enters > leaves
        ? Optional.empty()
        : Optional.of(new Segment(line.at(enters), line.at(leaves)));
  }
}
