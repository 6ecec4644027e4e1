package lampwright.setup.buildable;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.figures.FiguresComputation;

/**
 * Says of any setup of a catalogue whether a kit makes it within so many stops, and else how far it
 * is off. One thread's: {@link #another} makes one for another thread.
 *
 * <p>A setup is made within τ stops when there is a camera setting and a way to make each light so
 * that every light misses its level, and the ambient its offset, by τ at most and no light looks
 * more than twice or less than half as large: where {@link AdaptationSearch#isWithin} says so. The
 * yes or no is the same as there. How far off is the least such τ, right to {@link
 * #TOLERANCE_STOPS}.
 *
 * <p>The search weighs what a setup costs; here only the worst miss counts, so the exposures can be
 * gone through by the two numbers that matter, and the lights' strengths are read off tables. Only
 * where that comes out within the tables' error of what is asked for is the light computed without
 * them. A kit with packs, and a setup with a reading of its own of a head and modifier that the kit
 * has, are left to the full search.
 */
public final class Judge {

  /** By how much {@link Verdict.Beyond} may differ from the full search's. */
  public static final double TOLERANCE_STOPS = 0.02;

  private static final double ROUNDING = 1e-9;
  private static final double FIRST_CAP = 0.25;
  private static final double MOST_STOPS = 64;
  private static final int FIRST_MODIFIERS = 2;
  private static final ShutterReach NONE = new ShutterReach(true, List.of(), 0, 0);
  private static final Verdict WITHIN = new Verdict.Within();

  private final DemandCatalogue demands;
  private final KitReach kit;
  private final boolean needsSearch;
  private final Makings makings;
  private final Allotting allotting;
  private double asked;
  private double enough;
  private double best;
  private boolean countedOut;
  private boolean counted;
  private long searched;
  private long computed;

  private Judge(DemandCatalogue demands, KitReach kit) {
    this.demands = demands;
    this.kit = kit;
    this.needsSearch = kit.needsSearch();
    int most = 1;
    for (int i = 0; i < demands.size(); i++) {
      most = Math.max(most, demands.firstLight[i + 1] - demands.firstLight[i]);
    }
    this.makings = new Makings(kit, demands, most);
    this.allotting = new Allotting(kit, makings, most);
  }

  /** A judge of a kit over a catalogue; takes some milliseconds to know the kit. */
  public static Judge of(Kit kit, DemandCatalogue demands) {
    return new Judge(demands, new KitReach(kit, demands));
  }

  /** The same for another thread. */
  public Judge another() {
    return new Judge(demands, kit);
  }

  /** How many setups this one had to leave to the full search. */
  public long searched() {
    return searched;
  }

  /** How many setups came out so near to what was asked that the tables did not do. */
  public long computed() {
    return computed;
  }

  /**
   * Judges one setup.
   *
   * @param setup its place in the catalogue
   * @param within 0 or more
   */
  public Verdict judge(int setup, Stops within) {
    return find(setup, within).orElseGet(() -> search(setup, within));
  }

  /**
   * Judges one setup without the full search.
   *
   * @param within 0 or more
   * @return empty where only the full search can tell: {@link SearchedReach}
   */
  public Optional<Verdict> find(int setup, Stops within) {
    asked = within.value();
    if (needsSearch || kit.sharesReading(demands.readings(setup))) {
      return Optional.empty();
    }
    Verdict verdict = quickly(setup);
    return allotting.gaveUp() ? Optional.empty() : Optional.of(verdict);
  }

  private Verdict quickly(int setup) {
    allotting.begin(0);
    int lights = demands.firstLight[setup + 1] - demands.firstLight[setup];
    if (kit.headCount() < lights) {
      return new Verdict.Never(Verdict.Reason.TOO_FEW_HEADS);
    }
    if (!kit.hasStands(demands, demands.firstLight[setup], demands.firstLight[setup + 1])) {
      return new Verdict.Never(Verdict.Reason.NO_STAND_SO_HIGH);
    }
    if (isSurelyWithin(setup, lights)) {
      return WITHIN;
    }
    if (!makings.collect(setup, false, Integer.MAX_VALUE)) {
      return new Verdict.Never(makings.refusal());
    }
    double off = least(setup, lights, asked - ModifierReach.TABLE_ERROR_STOPS, MOST_STOPS);
    if (Math.abs(off - asked) <= ModifierReach.TABLE_ERROR_STOPS + ROUNDING) {
      computed++;
      makings.collect(setup, true, Integer.MAX_VALUE);
      off = least(setup, lights, asked, MOST_STOPS);
    }
    if (off <= asked + ROUNDING) {
      return WITHIN;
    }
    return off < Double.POSITIVE_INFINITY
        ? new Verdict.Beyond(new Stops(off))
        : new Verdict.Never(
            countedOut ? Verdict.Reason.TOO_FEW_MODIFIERS : Verdict.Reason.NO_CAMERA_SETTING);
  }

  /** Looks only at the first modifiers of each light, which are enough for most setups. */
  private boolean isSurelyWithin(int setup, int lights) {
    double sure = asked - ModifierReach.TABLE_ERROR_STOPS;
    return sure > 0
        && makings.collect(setup, false, FIRST_MODIFIERS)
        && least(setup, lights, sure, asked) <= sure + ROUNDING;
  }

  /**
   * The least stops within which the kit makes a setup, or 0 where that is no more than what is
   * enough; infinite where it does not within the most.
   */
  private double least(int setup, int lights, double enoughStops, double most) {
    allotting.begin(lights);
    enough = enoughStops + ROUNDING;
    double cap = Math.min(most, Math.max(FIRST_CAP, asked));
    counted = false;
    countedOut = false;
    while (true) {
      best = cap + 2 * ROUNDING;
      double none = best;
      for (CameraReach.Packed camera : kit.cameras[demands.cameraKind[setup]]) {
        look(camera, demands.shotEv100[setup]);
        if (countedOut) {
          return Double.POSITIVE_INFINITY;
        }
        if (best <= enough || allotting.gaveUp()) {
          return best;
        }
      }
      if (best < none) {
        return best;
      }
      if (cap >= most) {
        return Double.POSITIVE_INFINITY;
      }
      cap *= 2;
    }
  }

  private void look(CameraReach.Packed camera, double shotEv100) {
    double[] clear = camera.clearTimes;
    if (clear.length > 0) {
      double from = Math.max(shotEv100 + clear[0], makings.leastNeeded - CameraReach.ZERO_LEVEL);
      double to =
          Math.min(
              shotEv100 + clear[clear.length - 1], makings.mostNeeded - CameraReach.ZERO_LEVEL);
      lookAround(camera, from, to, shotEv100);
    }
    for (int i = 0; i < camera.otherTimes.length && isOpen(); i++) {
      lookAt(camera, i, shotEv100);
    }
  }

  /** The clear times: what counts of them is the nearest to each exposure. */
  private void lookAround(CameraReach.Packed camera, double from, double to, double shotEv100) {
    double[] levels = camera.levels;
    int low = firstNotBelow(levels, Math.min(from, to) - best);
    int high = firstNotBelow(levels, Math.max(from, to) + best);
    int down = firstNotBelow(levels, (from + to) / 2);
    down = Math.max(low, Math.min(high, down));
    int up = down;
    while ((down > low || up < high) && isOpen()) {
      if (down > low) {
        lookAtLevel(levels[--down], camera, shotEv100);
      }
      if (up < high && isOpen()) {
        lookAtLevel(levels[up++], camera, shotEv100);
      }
    }
  }

  private void lookAtLevel(double level, CameraReach.Packed camera, double shotEv100) {
    double exposure = level + CameraReach.ZERO_LEVEL;
    double lights = Math.max(exposure - makings.mostNeeded, makings.leastNeeded - exposure);
    if (lights >= best) {
      return;
    }
    double[] times = camera.clearTimes;
    double wanted = level - shotEv100;
    int next = firstNotBelow(times, wanted);
    double ambient = next < times.length ? times[next] - wanted : Double.POSITIVE_INFINITY;
    if (next > 0) {
      ambient = Math.min(ambient, wanted - times[next - 1]);
    }
    take(allotting.least(exposure, NONE, true, enough, ambientMiss(ambient), best));
  }

  private void lookAt(CameraReach.Packed camera, int time, double shotEv100) {
    ShutterReach shutter = camera.shutters[time];
    double[] levels = camera.levels;
    double wanted = shotEv100 + camera.otherTimes[time];
    int low = firstNotBelow(levels, wanted - best);
    for (int i = low; i < levels.length && levels[i] <= wanted + best && isOpen(); i++) {
      double exposure = levels[i] + CameraReach.ZERO_LEVEL;
      double dark = exposure - makings.mostNeeded + shutter.leastLoss();
      double bright = makings.leastNeeded - exposure - shutter.mostLoss();
      if (Math.max(dark, bright) < best) {
        double ambient = ambientMiss(Math.abs(levels[i] - wanted));
        take(allotting.least(exposure, shutter, false, enough, ambient, best));
      }
    }
  }

  private double ambientMiss(double stops) {
    return stops <= asked + ROUNDING ? 0 : stops;
  }

  /** Notes what an exposure gives; where the lights fell short, whether they always will. */
  private void take(double found) {
    best = Math.min(best, found);
    if (allotting.fellShort() && !counted) {
      counted = true;
      countedOut = !allotting.isEnough();
    }
  }

  private boolean isOpen() {
    return best > enough && !countedOut && !allotting.gaveUp();
  }

  private static int firstNotBelow(double[] rising, double value) {
    int low = 0;
    int high = rising.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rising[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** By the full search, how far off by halving. */
  private Verdict search(int setup, Stops within) {
    searched++;
    SetupDocument document = demands.setup(setup);
    return new SearchedReach(document, FiguresComputation.of(document), kit.kit()).judge(within);
  }
}
