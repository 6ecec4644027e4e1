package lampwright.setup.adapting;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/**
 * What is needed to find the ways to make a light.
 *
 * @param views what each camera that may be used takes in; absent where that is not known
 * @param trial a change to one light that is tried out
 */
record Gathering(
    SetupDocument setup,
    KitTonight kit,
    Supplies supplies,
    PairedReadings readings,
    Wishes wishes,
    Weights weights,
    List<Optional<CameraView>> views,
    Trial trial) {

  /** The pace and the frames that are wished for, or planned. */
  static Supplies.Pace pace(SetupDocument setup, Wishes wishes) {
    return new Supplies.Pace(
        wishes.limits().betweenFrames().or(() -> setup.plan().flatMap(Plan::betweenFrames)),
        wishes.limits().frames().or(() -> setup.plan().flatMap(Plan::frames)));
  }

  Supplies.Pace pace() {
    return pace(setup, wishes);
  }

  /** Asks whether a subject moves, which makes the time part of the look and forbids more pops. */
  static boolean isMoving(SetupDocument setup) {
    return setup.subjects().stream().flatMap(s -> s.speedMPerS().stream()).anyMatch(v -> v > 0);
  }

  boolean moving() {
    return isMoving(setup);
  }

  /** The cameras that would have a face in the picture where it is moved, and had it not before. */
  BitSet seenBy(Point before, Point now, Metres size) {
    BitSet seenBy = new BitSet();
    Metres radius = new Metres(size.value() / 2);
    for (int i = 0; i < views.size(); i++) {
      Optional<CameraView> view = views.get(i);
      if (view.isPresent() && view.get().sees(now, radius) && !view.get().sees(before, radius)) {
        seenBy.set(i);
      }
    }
    return seenBy;
  }
}
