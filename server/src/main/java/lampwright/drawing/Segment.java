package lampwright.drawing;

/** A straight line of a drawing. */
record Segment(Spot from, Spot to) {

  double length() {
    return from.distanceTo(to);
  }

  /** The spot at this share of the way, 0 at the start and 1 at the end. */
  Spot at(double share) {
    return from.plus(to.minus(from).times(share));
  }

  /** The spot of the line that is nearest to the given one. */
  Spot nearestTo(Spot spot) {
    Spot way = to.minus(from);
    double squared = way.x() * way.x() + way.y() * way.y();
    if (squared == 0) {
      return from;
    }
    Spot gone = spot.minus(from);
    return at(Math.clamp((gone.x() * way.x() + gone.y() * way.y()) / squared, 0.0, 1.0));
  }
}
