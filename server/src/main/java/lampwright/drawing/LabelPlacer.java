package lampwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Placed;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;

/**
 * Gives every label a place where it hides nothing: the important ones first, each at its cheapest
 * wish that is free, else at the nearest free place of the frame. The same labels always get the
 * same places. What finds no room at all is left out; the table beside the drawing still says it.
 */
final class LabelPlacer {

  /** Side of the grid that is searched when no wish is free. */
  private static final double GRID = 12;

  /** What matters no more than this stands near by or not at all. */
  static final int ONLY_NEARBY = 30;

  private final Sheet.Format format;
  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<Segment> strokes = new ArrayList<>();
  private final List<Crossing> crossings = new ArrayList<>();

  private record Crossing(Segment line, double cost) {}

  LabelPlacer(Sheet sheet) {
    this(sheet.format(), sheet.frame());
  }

  LabelPlacer(Sheet.Format format, Box frame) {
    this.format = format;
    this.frame = frame.grown(-format.gap);
  }

  /** Nothing may stand here. */
  void keepFree(Box box) {
    taken.add(box);
  }

  /** Nothing may stand on this heavy stroke. */
  void keepFree(Segment stroke) {
    strokes.add(stroke);
  }

  /** A label may stand on this fine line, at a cost in units moved. */
  void avoid(Segment line, double cost) {
    crossings.add(new Crossing(line, cost));
  }

  /** Places all labels; the result is in the order in which they were placed. */
  List<Placed> place(List<Label> labels) {
    List<Placed> placed = new ArrayList<>();
    labels.stream()
        .sorted(Comparator.comparingInt(Label::importance).reversed())
        .forEach(
            label ->
                best(label)
                    .ifPresent(
                        found -> {
                          placed.add(found);
                          taken.add(found.box());
                          if (found.isFar()) {
                            crossings.add(new Crossing(found.leader(), 14));
                          }
                        }));
    return List.copyOf(placed);
  }

  private Optional<Placed> best(Label label) {
    Optional<Placed> wished = cheapest(label, label.wishes());
    return wished.isPresent() || label.importance() <= ONLY_NEARBY
        ? wished
        : cheapest(label, anywhere(label));
  }

  private Optional<Placed> cheapest(Label label, List<Wish> wishes) {
    Optional<Placed> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    double width = label.width(format);
    for (Wish wish : wishes) {
      if (wish.cost() < least) {
        Box box = label.box(wish, format, width);
        double cost = isFree(box) ? crossed(box, wish.cost(), least) : least;
        if (cost < least) {
          least = cost;
          best = Optional.of(new Placed(label, wish, box));
        }
      }
    }
    return best;
  }

  // Asked thousands of times a drawing, between two frames of an editor: loops, not streams.
  private boolean isFree(Box box) {
    if (!frame.contains(box)) {
      return false;
    }
    for (Box other : taken) {
      if (box.overlaps(other)) {
        return false;
      }
    }
    Box wider = box.grown(format.gap);
    for (Segment stroke : strokes) {
      if (wider.touches(stroke)) {
        return false;
      }
    }
    return true;
  }

  /** A wish's cost and that of every line that its box stands on, as far as it is worth knowing. */
  private double crossed(Box box, double wish, double least) {
    double cost = wish;
    for (Crossing crossing : crossings) {
      if (cost >= least) {
        return cost;
      }
      if (box.touches(crossing.line())) {
        cost += crossing.cost();
      }
    }
    return cost;
  }

  private List<Wish> anywhere(Label label) {
    List<Wish> wishes = new ArrayList<>();
    for (double y = frame.top() + GRID; y < frame.bottom(); y += GRID) {
      for (double x = frame.left() + GRID; x < frame.right(); x += GRID) {
        Spot at = new Spot(x, y);
        wishes.add(new Wish(at, Side.MIDDLE, at.distanceTo(label.anchor())));
      }
    }
    return wishes;
  }
}
