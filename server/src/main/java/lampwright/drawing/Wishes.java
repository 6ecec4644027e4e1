package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;

/** Where labels like to stand beside what they name. */
final class Wishes {

  /** How far a label may move outward before any free place is as good. */
  private static final int RINGS = 7;

  private static final double RING = 11;

  private Wishes() {}

  /**
   * Around a spot: to the right first, as one reads on, then left, above and below.
   *
   * @param clearance from the spot to the nearest edge of the label
   * @param halfLine half the height of the label
   */
  static List<Wish> around(Spot spot, double clearance, double halfLine) {
    List<Wish> wishes = new ArrayList<>();
    for (int ring = 0; ring < RINGS; ring++) {
      double off = clearance + ring * RING;
      double cost = ring * RING;
      double slant = off * 0.7;
      double above = spot.y() - slant - halfLine * 0.6;
      double below = spot.y() + slant + halfLine * 0.6;
      wishes.add(new Wish(new Spot(spot.x() + off, spot.y()), Side.START, cost));
      wishes.add(new Wish(new Spot(spot.x() - off, spot.y()), Side.END, cost + 3));
      wishes.add(new Wish(new Spot(spot.x() + slant, above), Side.START, cost + 1));
      wishes.add(new Wish(new Spot(spot.x() + slant, below), Side.START, cost + 2));
      wishes.add(new Wish(new Spot(spot.x() - slant, above), Side.END, cost + 4));
      wishes.add(new Wish(new Spot(spot.x() - slant, below), Side.END, cost + 5));
      wishes.add(new Wish(new Spot(spot.x(), spot.y() - off - halfLine), Side.MIDDLE, cost + 4));
      wishes.add(new Wish(new Spot(spot.x(), spot.y() + off + halfLine), Side.MIDDLE, cost + 5));
    }
    return wishes;
  }

  /** On a line, its middle first, then beside it. */
  static List<Wish> on(Segment line, double halfLine) {
    List<Wish> wishes = new ArrayList<>();
    Spot way = line.from().unitTo(line.to());
    Spot across = new Spot(-way.y(), way.x());
    double length = line.length();
    for (int step = 0; step <= 8; step++) {
      for (int sign = step == 0 ? 1 : -1; sign <= 1; sign += 2) {
        double share = 0.5 + sign * step * 0.045;
        double cost = step * 0.045 * length * 0.5;
        wishes.add(new Wish(line.at(share), Side.MIDDLE, cost));
        for (int side = -1; side <= 1; side += 2) {
          Spot beside = line.at(share).along(across, side * (halfLine + 6));
          boolean right = across.x() * side > 0;
          wishes.add(new Wish(beside, right ? Side.START : Side.END, cost + 26));
        }
      }
    }
    return wishes;
  }

  /** Along a stroke, clear of it on either side: its ends, then between. */
  static List<Wish> beside(Segment stroke, double halfLine) {
    List<Wish> wishes = new ArrayList<>();
    Spot way = stroke.from().unitTo(stroke.to());
    Spot across = new Spot(-way.y(), way.x());
    // A label is wider than high: the more upright the stroke, the farther its middle line is off.
    double off = 9 + halfLine * Math.abs(across.y());
    for (int step = 0; step <= 10; step++) {
      double share = step / 10.0;
      for (int side = -1; side <= 1; side += 2) {
        Spot at = stroke.at(share).along(across, side * off);
        double cost = Math.min(step, 10 - step) * 1.5 + (across.y() * side > 0 ? 3 : 0);
        double lean = across.x() * side;
        if (Math.abs(lean) > 0.35) {
          wishes.add(new Wish(at, lean > 0 ? Side.START : Side.END, cost));
        } else {
          Side inward =
              share < 0.34 == (way.x() > 0) ? Side.START : share > 0.66 ? Side.END : Side.MIDDLE;
          wishes.add(new Wish(at, step == 5 ? Side.MIDDLE : inward, cost));
          wishes.add(new Wish(at, Side.MIDDLE, cost + 2));
          wishes.add(new Wish(at, Side.START, cost + 2));
          wishes.add(new Wish(at, Side.END, cost + 2));
        }
      }
    }
    return wishes;
  }

  /** A disc behind a face, then round it, then farther off. */
  static List<Wish> behind(Spot face, Spot heading, double clearance) {
    List<Wish> wishes = new ArrayList<>();
    double[] turns = {0, 25, -25, 50, -50, 75, -75, 100, -100, 130, -130};
    for (int ring = 0; ring < RINGS; ring++) {
      for (double turn : turns) {
        Spot at = face.along(heading.turned(180 + turn), clearance + ring * 9);
        wishes.add(new Wish(at, Side.MIDDLE, ring * 12 + Math.abs(turn) * 0.2));
      }
    }
    return wishes;
  }
}
