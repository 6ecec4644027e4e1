package lampwright.setup.buildable;

import java.util.List;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;

/** The powers of one model of head, and how battery and pace bound them. */
final class HeadReach {

  private static final double ROUNDING = 1e-9;

  private final int count;
  private final double stepStops;
  private final int last;
  private final double recycleS;
  private final double flashes;

  HeadReach(Head head, int count) {
    List<Stops> powers = powers(head);
    this.count = count;
    this.last = powers.size() - 1;
    this.stepStops = last == 0 ? 1 : powers.getLast().value() / last;
    this.recycleS = head.recycle().map(Seconds::value).orElse(0.0);
    this.flashes =
        head.feed() == Head.Feed.BATTERY && head.flashesPerCharge().isPresent()
            ? (double) head.flashesPerCharge().get() * head.batteries()
            : Double.POSITIVE_INFINITY;
  }

  /** The powers of a head, in stops below full. */
  static List<Stops> powers(Head head) {
    return new PowerRange(head.range(), head.step()).settings();
  }

  int count() {
    return count;
  }

  /**
   * The first step of the dial that lasts and recycles as is wished; beyond the last where none
   * does.
   */
  int first(int pops, double betweenFramesS, int frames) {
    double down = 0;
    if (recycleS > 0 && betweenFramesS < Double.POSITIVE_INFINITY) {
      down = Math.max(down, Doublings.of(recycleS * pops / betweenFramesS));
    }
    if (frames > 0 && flashes < Double.POSITIVE_INFINITY) {
      if (flashes == 0) {
        return last + 1;
      }
      down = Math.max(down, Doublings.of((double) frames * pops / flashes));
    }
    return (int) Math.min(last + 1.0, Math.ceil((down - ROUNDING) / stepStops));
  }

  boolean has(int step) {
    return step <= last;
  }

  double mostDown() {
    return last * stepStops;
  }

  double down(int step) {
    return step * stepStops;
  }

  /** By how much the best power misses where the shutter takes nothing. */
  double miss(double exact, int first) {
    double nearest = Math.floor(exact / stepStops + 0.5);
    return Math.abs(exact - Math.max(first, Math.min(last, nearest)) * stepStops);
  }
}
