package lampwright.drawing;

/**
 * A point of a drawing, or a way across it, in units of its view box: x to the right, y down.
 *
 * @param x units to the right
 * @param y units down
 */
record Spot(double x, double y) {

  Spot plus(Spot way) {
    return new Spot(x + way.x, y + way.y);
  }

  Spot minus(Spot other) {
    return new Spot(x - other.x, y - other.y);
  }

  Spot times(double factor) {
    return new Spot(x * factor, y * factor);
  }

  /** This spot moved so many units along a way of length one. */
  Spot along(Spot unit, double units) {
    return new Spot(x + unit.x * units, y + unit.y * units);
  }

  /** Turned by so many degrees, clockwise as one looks at the drawing. */
  Spot turned(double degrees) {
    double radians = degrees * Math.PI / 180;
    double cosine = StrictMath.cos(radians);
    double sine = StrictMath.sin(radians);
    return new Spot(x * cosine - y * sine, x * sine + y * cosine);
  }

  double length() {
    return Math.sqrt(x * x + y * y);
  }

  double distanceTo(Spot other) {
    return other.minus(this).length();
  }

  /** The way of length one from here to there; straight down the drawing where both are one. */
  Spot unitTo(Spot other) {
    Spot way = other.minus(this);
    double length = way.length();
    return length < 1e-9 ? new Spot(0, 1) : way.times(1 / length);
  }
}
