package lampwright.setup.adapting;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.gear.Body;

/**
 * The whole problem as one integer program, for somebody else's solver: a variable for each camera
 * setting that can matter and, at each, one for each candidate of each light.
 *
 * <pre>
 *   minimise    Σₛ cost(s) y(s) + Σₛᵢ cost(s, i, c) x(s, i, c) + price · w
 *   subject to  Σₛ y(s) = 1,  Σ over c of x(s, i, c) = y(s)          for each setting and light
 *               Σ over i, c of taken(c, k) x(s, i, c) ≤ supply(k) y(s)   for each supply
 *               w ≥ Σ over s, c of wait(s, i, c) x(s, i, c)              for each light
 * </pre>
 *
 * Left out is only what anybody would see to be no better: of settings that ask for the same light
 * all but the cheapest, of a light's candidates that take the same all but the best, and settings
 * whose lights would cost too much even if each had the kit for itself.
 */
final class IntegerProgram {

  /** More than any light costs: lights outside of their limits come first. */
  private static final double OUTSIDE = 1_000;

  private final StatedProblem problem;
  private final List<Double> supplies;
  private final List<Scene> scenes;

  /** What the lights see of a setting: the exposure in millionths of a stop, and the shutter. */
  private record Seen(long exposure, Optional<ShutterTime> time, int pair) {}

  /** A setting with what is worth a variable, and what it costs at the least. */
  private record Scene(
      StatedCameras.Setting setting,
      List<List<StatedProblem.Candidate>> candidates,
      double atLeast) {}

  IntegerProgram(StatedProblem problem) {
    Loader.loadNativeLibraries();
    this.problem = problem;
    this.supplies = problem.supplies();
    this.scenes = scenes();
  }

  /**
   * The least cost, with a thousand for each light outside of its limits. The likeliest setting by
   * itself comes first, so that the whole has no settings in it that cannot be the best.
   */
  double solve() {
    double bound = solve(List.of(scenes.getFirst()));
    return solve(scenes.stream().filter(scene -> scene.atLeast() < bound + 1e-9).toList());
  }

  /** The same, of the whole program at once, as it is stated. */
  double solveWhole() {
    return solve(scenes);
  }

  private List<Scene> scenes() {
    Map<Seen, StatedCameras.Setting> cheapest = new HashMap<>();
    for (StatedCameras.Setting setting : problem.settings()) {
      cheapest.merge(seen(setting), setting, (a, b) -> a.cost() <= b.cost() ? a : b);
    }
    return cheapest.values().stream()
        .map(this::scene)
        .sorted(Comparator.comparingDouble(Scene::atLeast))
        .toList();
  }

  private Seen seen(StatedCameras.Setting setting) {
    double stops =
        CostForTests.log2(setting.exposure().requiredExposure(MeterConstant.FLAT).value());
    boolean timeMatters =
        problem.wishes.limits().popsPerLight().isPresent()
            || setting.body().filter(IntegerProgram::takesLight).isPresent()
            || problem.gear.heads.stream()
                .anyMatch(kind -> kind.head().longBurstEfficiency().isPresent());
    return new Seen(
        Math.round(stops * 1e6),
        timeMatters ? Optional.of(setting.exposure().time()) : Optional.empty(),
        setting.pair());
  }

  private static boolean takesLight(Body body) {
    return body.shutter() == Body.Shutter.LEAF || body.curtainTravel().isPresent();
  }

  private Scene scene(StatedCameras.Setting setting) {
    List<List<StatedProblem.Candidate>> rows = new ArrayList<>();
    double atLeast = setting.cost();
    for (List<StatedProblem.Candidate> row : problem.candidates(setting)) {
      List<StatedProblem.Candidate> best = undominated(row);
      rows.add(best);
      atLeast += best.stream().mapToDouble(IntegerProgram::cost).min().orElseThrow();
    }
    return new Scene(setting, rows, atLeast);
  }

  private static double cost(StatedProblem.Candidate candidate) {
    return candidate.cost() + (candidate.outside() ? OUTSIDE : 0);
  }

  /** Without those for which another takes the same and costs no more, its wait included. */
  private List<StatedProblem.Candidate> undominated(List<StatedProblem.Candidate> row) {
    Map<Taken, List<StatedProblem.Candidate>> alike = new HashMap<>();
    row.stream()
        .sorted(Comparator.comparingDouble(IntegerProgram::cost))
        .forEach(
            candidate -> {
              List<StatedProblem.Candidate> better =
                  alike.computeIfAbsent(candidate.taken(), all -> new ArrayList<>());
              if (better.stream().noneMatch(other -> isNoWorse(other, candidate))) {
                better.add(candidate);
              }
            });
    return alike.values().stream().flatMap(List::stream).toList();
  }

  private boolean isNoWorse(StatedProblem.Candidate one, StatedProblem.Candidate other) {
    double longer = Math.max(0, one.waitS() - other.waitS());
    return cost(one) + problem.pacePerS() * longer <= cost(other);
  }

  private double solve(List<Scene> scenes) {
    MPSolver solver =
        Objects.requireNonNull(MPSolver.createSolver("SCIP"), "OR-tools without SCIP");

    MPObjective objective = solver.objective();
    objective.setMinimization();
    int lights = scenes.getFirst().candidates().size();
    MPVariable wait = solver.makeNumVar(0, Double.POSITIVE_INFINITY, "");
    objective.setCoefficient(wait, problem.pacePerS());
    MPConstraint oneSetting = solver.makeConstraint(1, 1);
    List<MPConstraint> waits = new ArrayList<>();
    for (int i = 0; i < lights; i++) {
      MPConstraint longest = solver.makeConstraint(0, Double.POSITIVE_INFINITY);
      longest.setCoefficient(wait, 1);
      waits.add(longest);
    }
    Map<MPVariable, StatedProblem.Candidate> candidates = new LinkedHashMap<>();
    Map<MPVariable, StatedCameras.Setting> settings = new LinkedHashMap<>();
    for (Scene scene : scenes) {
      MPVariable chosen = solver.makeBoolVar("");
      settings.put(chosen, scene.setting());
      objective.setCoefficient(chosen, scene.setting().cost());
      oneSetting.setCoefficient(chosen, 1);
      List<MPConstraint> limits = new ArrayList<>();
      for (double supply : supplies) {
        MPConstraint limit = solver.makeConstraint(Double.NEGATIVE_INFINITY, 0);
        limit.setCoefficient(chosen, -supply);
        limits.add(limit);
      }
      for (int i = 0; i < lights; i++) {
        MPConstraint oneCandidate = solver.makeConstraint(0, 0);
        oneCandidate.setCoefficient(chosen, -1);
        for (StatedProblem.Candidate candidate : scene.candidates().get(i)) {
          MPVariable taken = solver.makeBoolVar("");
          candidates.put(taken, candidate);
          objective.setCoefficient(taken, cost(candidate));
          oneCandidate.setCoefficient(taken, 1);
          waits.get(i).setCoefficient(taken, -candidate.waitS());
          for (int k = 0; k < supplies.size(); k++) {
            if (candidate.taken().of(k) > 0) {
              limits.get(k).setCoefficient(taken, candidate.taken().of(k));
            }
          }
        }
      }
    }
    MPSolverParameters exactly = new MPSolverParameters();
    exactly.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = solver.solve(exactly);
    if (status != MPSolver.ResultStatus.OPTIMAL) {
      throw new IllegalStateException("The solver says " + status + ".");
    }
    double least = costOf(chosen(settings).getFirst(), chosen(candidates));
    solver.delete();
    return least;
  }

  private static <T> List<T> chosen(Map<MPVariable, T> variables) {
    return variables.entrySet().stream()
        .filter(entry -> entry.getKey().solutionValue() > 0.5)
        .map(Map.Entry::getValue)
        .toList();
  }

  /** What the solver chose, added up anew: it takes 0.999999 for one. */
  private double costOf(StatedCameras.Setting setting, List<StatedProblem.Candidate> chosen) {
    double cost = setting.cost();
    double waitS = 0;
    for (StatedProblem.Candidate candidate : chosen) {
      cost += cost(candidate);
      waitS = Math.max(waitS, candidate.waitS());
    }
    for (int k = 0; k < supplies.size(); k++) {
      int supply = k;
      double taken = chosen.stream().mapToDouble(c -> c.taken().of(supply)).sum();
      if (taken > supplies.get(k) + 1e-6) {
        throw new IllegalStateException("The solver takes more than there is.");
      }
    }
    return cost + problem.pacePerS() * waitS;
  }
}
