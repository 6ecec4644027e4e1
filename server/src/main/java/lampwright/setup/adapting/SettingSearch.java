package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.ShutterTime;

/**
 * Finds the cheapest camera settings with the best that the lights can do at each, cheapest first.
 *
 * <p>A search by best bound: a camera costs at least its framing, with an aperture at least that
 * and its depth, with a time also its movement, a whole setting its own cost; to each is added what
 * the lights cost at the least, first over all exposures, then at this one. Only what comes first
 * in the queue is looked into, so the order in which solved settings come out is exact, and most
 * settings are never looked at.
 */
final class SettingSearch {

  /** Rounding of doubles. */
  private static final double ROUNDING = 1e-9;

  private final AdaptationProblem problem;
  private final BooleanSupplier stop;
  private final double ideal;
  private final PriorityQueue<Node> queue =
      new PriorityQueue<>(Comparator.comparingDouble(Node::atLeast).thenComparingLong(Node::order));
  private long order;
  private Optional<AdaptationProblem.Solved> bestSolved = Optional.empty();
  private double bestCost = Double.POSITIVE_INFINITY;
  private final List<AdaptationPlan> ways = new ArrayList<>();
  private final double leastCarrying;
  private double mostCost = Double.POSITIVE_INFINITY;

  /** What is to be looked at: the further down the list, the more is known of it. */
  private sealed interface Step {
    record OfCamera(int camera) implements Step {}

    record OfAperture(int camera, FNumber aperture) implements Step {}

    record OfTime(int camera, FNumber aperture, ShutterTime time) implements Step {}

    record OfSetting(int camera, CameraChoice.Setting setting, CameraCost cost) implements Step {}

    record Bounded(int camera, CameraChoice.Setting setting, CameraCost cost) implements Step {}

    record Done(AdaptationProblem.Solved solved) implements Step {}
  }

  private record Node(double atLeast, long order, Step step) {}

  /**
   * What came out.
   *
   * @param ways the best first, truly different; empty where no setting is allowed
   */
  record Found(List<AdaptationPlan> ways, Proof proof) {}

  private SettingSearch(AdaptationProblem problem, BooleanSupplier stop) {
    this.problem = problem;
    this.stop = stop;
    this.ideal = problem.idealCost(stop);
    this.leastCarrying = problem.leastCarrying();
    for (int c = 0; c < problem.cameras().size(); c++) {
      double framing = problem.cameras().get(c).framingDoublings();
      add(ideal + CameraCost.framing(framing, problem.weights()), new Step.OfCamera(c));
    }
  }

  static Found find(AdaptationProblem problem, BooleanSupplier stop) {
    return new SettingSearch(problem, stop).find();
  }

  private void add(double atLeast, Step step) {
    queue.add(new Node(atLeast, order++, step));
  }

  private Found find() {
    double atLeast = Double.NEGATIVE_INFINITY;
    double gap = 0;
    while (ways.size() < problem.wishes().ways()) {
      Optional<Done> next = next();
      if (next.isEmpty()) {
        break;
      }
      AdaptationPlan plan = next.get().solved().plan();
      if (ways.isEmpty()) {
        atLeast = next.get().atLeast();
        gap = Math.max(0, cost(next.get().solved()) - atLeast);
        gap = gap < ROUNDING ? 0 : gap;
        mostCost = cost(next.get().solved()) + Ways.MOST_DEARER;
      }
      if (ways.stream().allMatch(way -> Ways.isAnother(plan, way, problem.weights()))) {
        ways.add(plan);
      }
    }
    double penalty = ways.isEmpty() ? 0 : LightRow.OUTSIDE * ways.getFirst().outside();
    return new Found(List.copyOf(ways), new Proof(atLeast - penalty, gap, !problem.looksAtAll()));
  }

  private record Done(AdaptationProblem.Solved solved, double atLeast) {}

  /** The next cheapest solved setting; when told to stop, the best that is at hand. */
  private Optional<Done> next() {
    while (!queue.isEmpty()) {
      Node node = queue.remove();
      if (node.atLeast() > mostCost) {
        return Optional.empty();
      }
      if (node.step() instanceof Step.Done done) {
        return Optional.of(new Done(done.solved(), node.atLeast()));
      }
      if (stop.getAsBoolean()) {
        return stopped(node);
      }
      look(node);
    }
    return Optional.empty();
  }

  /** What is at hand when time is up: nothing better than the first node's bound exists. */
  private Optional<Done> stopped(Node first) {
    queue.clear();
    if (bestSolved.isPresent()) {
      Optional<Done> best = bestSolved.map(solved -> new Done(solved, first.atLeast()));
      bestSolved = Optional.empty();
      return best;
    }
    Node node = first;
    while (!(node.step() instanceof Step.Done)) {
      look(node);
      if (queue.isEmpty()) {
        return Optional.empty();
      }
      node = queue.remove();
    }
    queue.clear();
    return Optional.of(new Done(((Step.Done) node.step()).solved(), first.atLeast()));
  }

  private void look(Node node) {
    Weights weights = problem.weights();
    switch (node.step()) {
      case Step.OfCamera(int camera) -> {
        CameraChoice choice = problem.cameras().get(camera);
        for (FNumber aperture : choice.apertures(problem.wishes().limits())) {
          double depth = aperture.stopsAbove(choice.wantedAperture()).value();
          add(
              node.atLeast() + CameraCost.depth(depth, weights),
              new Step.OfAperture(camera, aperture));
        }
      }
      case Step.OfAperture(int camera, FNumber aperture) -> {
        CameraChoice choice = problem.cameras().get(camera);
        ShutterTime old = problem.setup().exposure().time();
        boolean moving = Gathering.isMoving(problem.setup());
        for (ShutterTime time : choice.times(problem.wishes().limits())) {
          double longer = time.stopsOver(old).value();
          add(
              node.atLeast() + CameraCost.movement(longer, moving, weights),
              new Step.OfTime(camera, aperture, time));
        }
      }
      case Step.OfTime(int camera, FNumber aperture, ShutterTime time) ->
          lookAtSettings(camera, aperture, time);
      case Step.OfSetting(int camera, CameraChoice.Setting setting, CameraCost cost) -> {
        if (mayBeAnother(cost)) {
          add(
              Math.max(node.atLeast(), cost.sum() + problem.lightsAtLeast(camera, setting)),
              new Step.Bounded(camera, setting, cost));
        }
      }
      case Step.Bounded(int camera, CameraChoice.Setting setting, CameraCost cost) -> {
        if (mayBeAnother(cost)) {
          solve(node, camera, setting, cost);
        }
      }
      case Step.Done _ -> throw new IllegalStateException("Done has nothing to look at.");
    }
  }

  private boolean mayBeAnother(CameraCost cost) {
    for (AdaptationPlan way : ways) {
      if (!Ways.mayBeBetter(cost, way, leastCarrying, problem.weights())) {
        return false;
      }
    }
    return true;
  }

  private void lookAtSettings(int camera, FNumber aperture, ShutterTime time) {
    Limits limits = problem.wishes().limits();
    for (CameraChoice.Setting setting :
        problem.cameras().get(camera).settings(aperture, time, limits)) {
      CameraCost cost = problem.cameraCost(camera, setting.exposure());
      boolean held =
          limits
              .ambientWithin()
              .filter(within -> Math.abs(cost.ambientStops()) > within.value() + ROUNDING)
              .isEmpty();
      if (held) {
        add(ideal + cost.sum(), new Step.OfSetting(camera, setting, cost));
      }
    }
  }

  private void solve(Node node, int camera, CameraChoice.Setting setting, CameraCost cost) {
    AdaptationProblem.Solved solved = problem.solve(camera, setting, cost, stop);
    double whole = cost(solved);
    if (whole < bestCost) {
      bestCost = whole;
      bestSolved = Optional.of(solved);
    }
    boolean proved = solved.lightsAtLeast() >= solved.lightsCost() - ROUNDING;
    add(
        proved ? whole : Math.max(node.atLeast(), cost.sum() + solved.lightsAtLeast()),
        new Step.Done(solved));
  }

  private static double cost(AdaptationProblem.Solved solved) {
    return solved.plan().cameraCost().sum() + solved.lightsCost();
  }
}
