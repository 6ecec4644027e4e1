package lampwright.engine.beam;

import java.util.List;
import lampwright.engine.unit.Degrees;

/** The ascending angles of a table, two or more, as a scale to interpolate on. */
record AngleScale(List<Degrees> angles) {

  /** Returns the place of the last angle but one that is not above the given one. */
  int below(double degrees) {
    int low = 0;
    int high = angles.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (angles.get(middle).value() <= degrees) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Returns how far an angle lies from the one at a place towards the next, 0 to 1. */
  double share(int place, double degrees) {
    double from = angles.get(place).value();
    double share = (degrees - from) / (angles.get(place + 1).value() - from);
    return Math.max(0, Math.min(1, share));
  }
}
