package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.Point;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.setup.Ambient;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.ShutterComputation;
import lampwright.setup.figures.ShutterEffect;

/**
 * The problem as DEVELOPERS.md states it, worked out from setup, kit and wishes without the
 * search's own classes: every camera setting, every way to make each light at each power, what each
 * takes of the kit. Only for wishes without an occasion.
 */
final class StatedProblem {

  private static final double ROUNDING = 1e-9;

  final SetupDocument setup;
  final Wishes wishes;
  final Figures before;
  final CostForTests costs;
  final StatedKit gear;
  final List<StatedCameras.Pair> pairs;
  final List<Double> heightsM;
  final boolean moves;

  private final Kit kit;
  private final Weights weights;
  private final List<StatedCameras.Setting> settings;
  private final List<StatedLight> lights;
  private final List<List<StatedLight.Way>> ways = new ArrayList<>();
  private final Map<Shot, Shutter> shutters = new HashMap<>();

  /**
   * A way to make a light at a power, or none.
   *
   * @param lit whether it is made at all
   * @param outside whether it misses by more than it may, or is left out where it may not be
   */
  record Candidate(double cost, double waitS, boolean lit, boolean outside, Taken taken) {}

  private record Shot(Optional<Body> body, ShutterTime time, Head head) {}

  /** What the shutter takes from a head, by power; nothing where they do not go together. */
  private record Shutter(boolean dark, List<Double> whole, List<Double> edge) {}

  StatedProblem(SetupDocument setup, Kit kit, Wishes wishes) {
    this.setup = setup;
    this.kit = kit;
    this.wishes = wishes;
    this.weights = wishes.weights();
    this.before = FiguresComputation.of(setup);
    this.costs = new CostForTests(setup, before, weights);
    this.moves =
        setup.subjects().stream().anyMatch(s -> s.speedMPerS().filter(v -> v > 0).isPresent());
    this.gear = new StatedKit(setup, kit, wishes);
    StatedCameras cameras = new StatedCameras(setup, kit, wishes.limits());
    this.pairs = cameras.pairs();
    Optional<Ev100> ambient = wishes.ambient().or(() -> setup.ambient().map(Ambient::level));
    this.settings = cameras.settings(before, ambient, weights);
    this.lights = before.lights().stream().map(was -> new StatedLight(this, was)).toList();
    this.heightsM =
        lights.stream()
            .flatMap(light -> light.places().stream())
            .map(Point::z)
            .filter(height -> !kit.stands().isEmpty() && height > 0.3)
            .distinct()
            .toList();
    lights.forEach(light -> ways.add(light.ways()));
  }

  /** The reading of a head with a modifier that counts: the kit's, else the setup's. */
  Optional<Output.ByReading> reading(Head head, Modifier modifier) {
    for (var pairing : kit.pairings()) {
      if (pairing.head().equals(head.name()) && pairing.modifier().equals(modifier.name())) {
        return Optional.of(pairing.reading());
      }
    }
    for (Light light : setup.lights()) {
      if (light.head().equals(head)
          && light.modifierOrStandard().equals(modifier)
          && light.output().isPresent()) {
        return light.output();
      }
    }
    return Optional.empty();
  }

  List<Double> supplies() {
    return gear.supplies(heightsM);
  }

  double pacePerS() {
    return weights.pacePerSecond();
  }

  List<StatedCameras.Setting> settings() {
    return settings;
  }

  /** Every light's candidates at a setting, the last of each to leave it out. */
  List<List<Candidate>> candidates(StatedCameras.Setting setting) {
    List<List<Candidate>> all = new ArrayList<>();
    double rightStops =
        CostForTests.log2(setting.exposure().requiredExposure(MeterConstant.FLAT).value());
    for (int i = 0; i < lights.size(); i++) {
      List<Candidate> row = new ArrayList<>();
      double wanted = rightStops + lights.get(i).wantedStops();
      for (StatedLight.Way way : ways.get(i)) {
        if (!way.seenBy().get(setting.pair())) {
          add(row, before.lights().get(i).light(), way, wanted, setting);
        }
      }
      double role = CostForTests.role(before.lights().get(i).light().role());
      row.add(
          new Candidate(
              role * weights.givenUp(),
              0,
              false,
              !lights.get(i).mayBeLeftOut(),
              new Taken(supplies().size())));
      all.add(row);
    }
    return all;
  }

  private void add(
      List<Candidate> row,
      Light light,
      StatedLight.Way way,
      double wanted,
      StatedCameras.Setting setting) {
    Shutter shutter = shutter(setting.body(), setting.exposure().time(), way.head());
    if (shutter.dark()) {
      return;
    }
    double role = CostForTests.role(light.role());
    List<Stops> steps = way.steps();
    for (int k = 0; k < steps.size(); k++) {
      double down = steps.get(k).value();
      double share = StrictMath.pow(2, -down);
      double between = way.recycleS() * share * (way.pops() - 1);
      boolean inTime = way.pops() <= light.pops() || between <= setting.exposure().time().seconds();
      if (down < way.leastDown() - ROUNDING || !inTime) {
        continue;
      }
      double miss = Math.abs(way.fullStops() - down - shutter.whole().get(k) - wanted);
      double cost = way.cost() + role * miss + weights.evenness() * role * shutter.edge().get(k);
      if (!CostForTests.isPowerUntouched(light, way.head(), steps.get(k))) {
        cost += weights.touch();
      }
      Taken taken = way.taken();
      if (way.pack() >= 0) {
        double energyWs = way.energyWs() * share;
        taken = taken.plus(gear.energy(way.pack(), heightsM.size()), energyWs);
        cost += costs.pacePerWs(gear.packs.get(way.pack())) * energyWs;
      }
      boolean outside =
          wishes.limits().lightWithin().filter(most -> miss > most.value() + ROUNDING).isPresent();
      row.add(new Candidate(cost, way.recycleS() * share * way.pops(), true, outside, taken));
    }
  }

  private Shutter shutter(Optional<Body> body, ShutterTime time, Head head) {
    return shutters.computeIfAbsent(
        new Shot(body, time, head), shot -> shutterOf(body, time, head));
  }

  private static Shutter shutterOf(Optional<Body> body, ShutterTime time, Head head) {
    List<Double> whole = new ArrayList<>();
    List<Double> edge = new ArrayList<>();
    boolean dark = false;
    for (Stops step : new PowerRange(head.range(), head.step()).settings()) {
      Optional<ShutterEffect> effect =
          body.map(b -> new ShutterComputation(b).effect(head, Optional.of(step), time));
      whole.add(effect.flatMap(ShutterEffect::wholeFrame).map(Stops::value).orElse(0.0));
      // Less than a twentieth of a stop at an edge is stated to cost nothing.
      edge.add(
          effect
              .flatMap(ShutterEffect::worstEdge)
              .map(Stops::value)
              .filter(loss -> loss >= 0.05)
              .orElse(0.0));
      dark |= effect.filter(e -> e.litShare() < 1).isPresent();
    }
    boolean tooFastForALeaf =
        body.filter(b -> b.shutter() == Body.Shutter.LEAF)
            .filter(b -> new ShutterComputation(b).isFasterThanSync(time))
            .isPresent();
    return new Shutter(dark || tooFastForALeaf, whole, edge);
  }
}
