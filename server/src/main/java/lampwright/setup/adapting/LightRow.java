package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.match.Choice;
import lampwright.engine.match.Uses;
import lampwright.setup.Light;

/**
 * The choices for one light at one exposure: every making with the powers that may be worth their
 * while, and giving the light up.
 *
 * <p>Of a dial's powers all are kept that could be part of a best answer: the cheapest, and below
 * it those that save more waiting, or more of a pack's energy, than they miss of the level.
 */
final class LightRow {

  /**
   * A light outside of its limits, before all else: first as few as possible are, then the cost
   * decides. Far above what any light costs, not so far that sums lose their last digits.
   */
  static final double OUTSIDE = 1_000;

  /**
   * One choice, as it is read back.
   *
   * @param step index on the making's dial
   * @param exact the power that would give just what is wanted, in stops below full
   * @param miss by how many stops the light is too bright in the picture; minus is too dark
   */
  record Lit(Making making, int step, double exact, double miss, double edge) {}

  private final LightProblem light;
  private final List<Choice> choices = new ArrayList<>();
  private final List<Optional<Lit>> lit = new ArrayList<>();

  /**
   * What does not depend on the exposure.
   *
   * @param wantedStops the light's level in the picture against the shooting exposure
   * @param mayGiveUp whether it may be left out
   */
  record LightProblem(
      Light light,
      double role,
      double wantedStops,
      boolean mayGiveUp,
      double lightWithin,
      Weights weights,
      List<Making> makings) {

    double costOfGivingUp() {
      return role * weights.givenUp() + (mayGiveUp ? 0 : OUTSIDE);
    }

    /** Asks whether a miss of either sign is more than the limit allows, rounding aside. */
    boolean isOutside(double missStops) {
      return Math.abs(missStops) > lightWithin + 1e-9;
    }

    /** Asks whether a making at a power is the light as it stands. */
    boolean isUntouched(Making making, int step) {
      return making.head().equals(light.head())
          && light.stopsDown().isPresent()
          && Math.abs(making.dial().down(step) - light.stopsDown().get().value()) < 1e-9;
    }

    /** The step at which the dial need not be touched; -1 where there is none, or it is all one. */
    int untouchedStep(Making making) {
      if (weights.touch() == 0 || light.stopsDown().isEmpty()) {
        return -1;
      }
      int step = making.dial().nearest(light.stopsDown().get().value());
      return isUntouched(making, step) ? step : -1;
    }
  }

  private LightRow(LightProblem light) {
    this.light = light;
  }

  /**
   * The row at an exposure.
   *
   * @param shootingStops the light that exposes a mid-tone rightly, in stops above 1 lx·s
   * @param shutter what the shutter takes; empty where the body is not known
   * @param camera index of the camera
   * @param openS how long the shutter is open, in seconds
   */
  static LightRow at(
      LightProblem light,
      double shootingStops,
      Optional<ShutterTable> shutter,
      int camera,
      double openS) {
    LightRow row = new LightRow(light);
    for (Making making : light.makings()) {
      if (!making.seenBy().get(camera)) {
        row.add(making, shootingStops, shutter, openS);
      }
    }
    row.choices.add(new Choice(light.costOfGivingUp(), 0, Uses.NOTHING));
    row.lit.add(Optional.empty());
    return row;
  }

  /** The row if every light could be met exactly: what no exposure can make cheaper. */
  static List<Choice> ideal(LightProblem light) {
    List<Choice> choices = new ArrayList<>();
    for (Making making : light.makings()) {
      choices.add(new Choice(making.costs().sum(), 0, making.uses()));
    }
    choices.add(new Choice(light.costOfGivingUp(), 0, Uses.NOTHING));
    return choices;
  }

  List<Choice> choices() {
    return choices;
  }

  Optional<Lit> lit(int choice) {
    return lit.get(choice);
  }

  private void add(
      Making making, double shootingStops, Optional<ShutterTable> shutter, double openS) {
    double exact = making.atFullStops() - shootingStops - light.wantedStops();
    Optional<ShutterTable.Losses> losses = Optional.empty();
    if (shutter.isPresent() && !shutter.get().clear()) {
      losses = shutter.get().ofModel().get(making.model());
      if (losses.isEmpty()) {
        return;
      }
    }
    Dial dial = making.dial();
    int first = firstInTime(making, openS);
    if (first >= dial.count()) {
      return;
    }
    int untouched = light.untouchedStep(making);
    boolean plain = losses.isEmpty() && first == 0 && making.onPack().isEmpty();
    int best =
        plain
            ? nearestOrUntouched(making, exact, untouched)
            : cheapest(making, exact, losses, first, untouched);
    double bestCost = cost(making, best, exact, losses, untouched);
    keep(making, best, exact, losses, bestCost);
    boolean pack = making.onPack().isPresent();
    double price = light.weights().pacePerSecond();
    double least = bestCost + price * dial.waitS(best);
    for (int k = best + 1; k < dial.count(); k++) {
      double cost = cost(making, k, exact, losses, untouched);
      double withWait = cost + price * dial.waitS(k);
      // What is no cheaper with its own wait than a step above is never cheaper with a longer one.
      if (pack ? cost < light.costOfGivingUp() : withWait < least) {
        keep(making, k, exact, losses, cost);
        least = Math.min(least, withWait);
      } else if (plain && k > untouched && cost >= least) {
        break;
      }
    }
  }

  /** More flashes than the setup's own must fit into the time that the shutter is open. */
  private int firstInTime(Making making, double openS) {
    int more = making.pops() - 1;
    if (making.pops() <= light.light().pops()) {
      return 0;
    }
    Dial dial = making.dial();
    int first = 0;
    while (first < dial.count() && dial.waitS(first) / making.pops() * more > openS) {
      first++;
    }
    return first;
  }

  /** Only the step that need not be touched can cost less than the nearest one. */
  private int nearestOrUntouched(Making making, double exact, int untouched) {
    int nearest = making.dial().nearest(exact);
    if (untouched < 0) {
      return nearest;
    }
    double least = cost(making, nearest, exact, Optional.empty(), untouched);
    return cost(making, untouched, exact, Optional.empty(), untouched) < least
        ? untouched
        : nearest;
  }

  private int cheapest(
      Making making, double exact, Optional<ShutterTable.Losses> losses, int first, int untouched) {
    int best = first;
    double least = Double.POSITIVE_INFINITY;
    for (int k = first; k < making.dial().count(); k++) {
      double cost = cost(making, k, exact, losses, untouched);
      // Of two alike the one with less light, as a dial half way between two powers is set.
      if (cost <= least + 1e-12) {
        least = Math.min(least, cost);
        best = k;
      }
    }
    return best;
  }

  private double cost(
      Making making, int k, double exact, Optional<ShutterTable.Losses> losses, int untouched) {
    double miss = Math.abs(miss(making, k, exact, losses));
    double outside = light.isOutside(miss) ? OUTSIDE : 0;
    double touched = k == untouched ? 0 : light.weights().touch();
    double pack = making.onPack().isPresent() ? making.onPack().get().costOfStep().get(k) : 0;
    double level = light.role() * miss;
    double evenness = light.weights().evenness() * light.role() * edge(making, k, losses);
    return making.costs().sum() + level + evenness + touched + pack + outside;
  }

  private static double miss(
      Making making, int k, double exact, Optional<ShutterTable.Losses> losses) {
    double taken = losses.isPresent() ? losses.get().wholeFrame(making.dial().first() + k) : 0;
    return exact - making.dial().down(k) - taken;
  }

  private static double edge(Making making, int k, Optional<ShutterTable.Losses> losses) {
    return losses.isPresent() ? losses.get().edge(making.dial().first() + k) : 0;
  }

  private void keep(
      Making making, int k, double exact, Optional<ShutterTable.Losses> losses, double cost) {
    choices.add(new Choice(cost, making.dial().waitS(k), making.uses(k)));
    lit.add(
        Optional.of(
            new Lit(making, k, exact, miss(making, k, exact, losses), edge(making, k, losses))));
  }
}
