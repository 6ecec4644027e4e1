package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best of all ways to give the kit to the lights, by trying them all. A way is not followed
 * farther once it costs as much as the best already, which is all the cleverness there is.
 */
final class EveryAllotment {

  /** What rounding may add up to, as a share: energies that just suffice do suffice. */
  private static final double ROUNDING = 1e-9;

  private final List<List<StatedProblem.Candidate>> rows = new ArrayList<>();
  private final double[] left;
  private final double pacePerS;
  private Best best;

  /**
   * First as few lights outside of their limits as possible, then the cost.
   *
   * @param lit how many lights are made
   */
  record Best(int outside, double cost, int lit) {

    static final Best NONE = new Best(Integer.MAX_VALUE, Double.POSITIVE_INFINITY, 0);

    boolean isBetterThan(Best other) {
      return outside < other.outside || (outside == other.outside && cost < other.cost);
    }
  }

  private EveryAllotment(
      StatedProblem problem, List<List<StatedProblem.Candidate>> rows, Best best) {
    for (List<StatedProblem.Candidate> row : rows) {
      this.rows.add(
          row.stream()
              .sorted(
                  Comparator.comparing(StatedProblem.Candidate::outside)
                      .thenComparingDouble(StatedProblem.Candidate::cost))
              .toList());
    }
    this.left = problem.supplies().stream().mapToDouble(Double::doubleValue).toArray();
    for (int k = 0; k < left.length; k++) {
      left[k] += ROUNDING * Math.max(1, left[k]);
    }
    this.pacePerS = problem.pacePerS();
    this.best = best;
  }

  /** The best of all camera settings and all ways to make the lights at each. */
  static Best of(StatedProblem problem) {
    Best best = Best.NONE;
    List<StatedCameras.Setting> cheapestFirst =
        problem.settings().stream()
            .sorted(Comparator.comparingDouble(StatedCameras.Setting::cost))
            .toList();
    for (StatedCameras.Setting setting : cheapestFirst) {
      if (best.outside() == 0 && setting.cost() >= best.cost()) {
        break;
      }
      EveryAllotment every = new EveryAllotment(problem, problem.candidates(setting), best);
      every.follow(0, new Best(0, setting.cost(), 0), 0);
      best = every.best;
    }
    return best;
  }

  private void follow(int light, Best soFar, double waitS) {
    Best whole = new Best(soFar.outside(), soFar.cost() + pacePerS * waitS, soFar.lit());
    if (!whole.isBetterThan(best)) {
      return;
    }
    if (light == rows.size()) {
      best = whole;
      return;
    }
    for (StatedProblem.Candidate candidate : rows.get(light)) {
      Best next =
          new Best(
              soFar.outside() + (candidate.outside() ? 1 : 0),
              soFar.cost() + candidate.cost(),
              soFar.lit() + (candidate.lit() ? 1 : 0));
      if (!next.isBetterThan(best)) {
        // What comes after is no better.
        return;
      }
      if (take(candidate.taken())) {
        follow(light + 1, next, Math.max(waitS, candidate.waitS()));
      }
      giveBack(candidate.taken());
    }
  }

  /** Takes in any case; asks whether it was there. */
  private boolean take(Taken taken) {
    boolean enough = true;
    for (int k = 0; k < left.length; k++) {
      left[k] -= taken.of(k);
      enough &= taken.of(k) == 0 || left[k] >= 0;
    }
    return enough;
  }

  private void giveBack(Taken taken) {
    for (int k = 0; k < left.length; k++) {
      left[k] += taken.of(k);
    }
  }
}
