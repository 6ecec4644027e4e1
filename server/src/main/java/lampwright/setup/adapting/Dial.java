package lampwright.setup.adapting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.power.PowerRange;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.Stops;

/**
 * The powers that a head may be set to: its real steps, without those that its battery or the pace
 * forbids. From the most power down.
 */
final class Dial {

  /** Far below a step, far above what rounding does. */
  private static final double ROUNDING = 1e-9;

  private final double[] steps;
  private final double[] waitsS;
  private final double step;
  private final int first;

  private Dial(double[] steps, double[] waitsS, double step, int first) {
    this.steps = steps;
    this.waitsS = waitsS;
    this.step = step;
    this.first = first;
  }

  /**
   * The powers from a least number of stops below full.
   *
   * @param atLeastDown what battery and pace leave
   * @param waitAtFull seconds until ready after full power, all pops
   * @return empty where no power is left
   */
  static Optional<Dial> of(PowerRange range, double atLeastDown, double waitAtFull) {
    List<Stops> all = range.settings();
    int first = 0;
    while (first < all.size() && all.get(first).value() < atLeastDown - ROUNDING) {
      first++;
    }
    if (first == all.size()) {
      return Optional.empty();
    }
    double[] steps = new double[all.size() - first];
    double[] waits = new double[steps.length];
    for (int i = 0; i < steps.length; i++) {
      Stops down = all.get(first + i);
      steps[i] = down.value();
      waits[i] = waitAtFull * down.negated().toFactor();
    }
    return Optional.of(new Dial(steps, waits, range.step().value(), first));
  }

  int count() {
    return steps.length;
  }

  /** Stops below full power. */
  double down(int index) {
    return steps[index];
  }

  /** Seconds until it is ready for the next picture. */
  double waitS(int index) {
    return waitsS[index];
  }

  /** Which of all the head's steps the first of these is. */
  int first() {
    return first;
  }

  /** The power nearest to one; half way between two the one with less light. */
  int nearest(double down) {
    long nearest = (long) Math.floor(down / step + 0.5 + ROUNDING) - first;
    return (int) Math.max(0, Math.min(steps.length - 1, nearest));
  }

  /**
   * A power as it is reported.
   *
   * @param exact stops below full that would give just what is wanted
   * @param index of the power that is set
   * @param miss by how much that is too bright in the picture; minus is too dark
   */
  PowerSetting setting(double exact, int index, double miss) {
    boolean most = index == 0;
    boolean least = index == steps.length - 1;
    return new PowerSetting(
        new Stops(exact),
        new Stops(steps[index]),
        new Stops(most ? Math.max(0, -miss) : 0),
        new Stops(least && !most ? Math.max(0, miss) : 0));
  }
}
