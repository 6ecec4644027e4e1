package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.match.Allotment;
import lampwright.engine.match.AllotmentSearch;
import lampwright.engine.match.Choice;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.language.Said;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;

/**
 * A setup and a kit made ready: the cameras, the ways to make each light, and what each exposure
 * makes of them. Not for several threads at once, because answers are kept.
 *
 * <p>What the lights can do depends on a camera setting only by the exposure that it asks for and
 * by what its shutter takes. All settings that agree in these are one scene, which is solved once.
 */
final class AdaptationProblem {

  private final SetupDocument setup;
  private final Wishes wishes;
  private final Weights weights;
  private final Figures original;
  private final Optional<Ev100> ambient;
  private final List<CameraChoice> cameras;
  private final List<LightRow.LightProblem> lights;
  private final List<List<Said>> refusals = new ArrayList<>();
  private final KitTonight kit;
  private final AllotmentSearch search;
  private final Map<SceneKey, Scene> scenes = new HashMap<>();
  private final Map<TimeKey, ShutterTable> tables = new HashMap<>();
  private final boolean looksAtAll;
  private final boolean seenSomewhere;
  private final boolean morePops;
  private final boolean moving;

  /** One body at one time. */
  private record TimeKey(int camera, ShutterTime time) {}

  /**
   * What the lights see of a setting.
   *
   * @param exposure in millionths of a stop
   * @param table what the shutter takes; absent where that is nothing
   * @param camera that may see moved lights; -1 where none does
   * @param time where pops must fit into it; absent else
   */
  private record SceneKey(
      long exposure, Optional<ShutterTable> table, int camera, Optional<ShutterTime> time) {}

  /** A scene with what is known of it. */
  private final class Scene {
    private final List<LightRow> rows = new ArrayList<>();
    private final List<List<Choice>> choices = new ArrayList<>();
    private double atLeast = Double.NaN;
    private Optional<Lights> solved = Optional.empty();

    Scene(double shootingStops, Optional<ShutterTable> table, int camera, double openS) {
      for (LightRow.LightProblem light : lights) {
        LightRow row = LightRow.at(light, shootingStops, table, camera, openS);
        rows.add(row);
        choices.add(row.choices());
      }
    }

    double lowerBound() {
      if (Double.isNaN(atLeast)) {
        atLeast = search.lowerBound(choices);
      }
      return atLeast;
    }

    Lights solve(BooleanSupplier stop) {
      if (solved.isEmpty()) {
        Allotment allotment =
            search
                .least(choices, Double.POSITIVE_INFINITY, stop)
                .orElseGet(this::everyLightGivenUp);
        List<Optional<LightRow.Lit>> lit = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
          lit.add(rows.get(i).lit(allotment.choiceOfRow().get(i)));
        }
        LightsPlan plan = LightsPlan.of(AdaptationProblem.this, lit);
        solved = Optional.of(new Lights(plan, allotment.cost(), allotment.atLeast()));
      }
      return solved.get();
    }

    /** What is always possible, for a search that was stopped before it found anything. */
    private Allotment everyLightGivenUp() {
      List<Integer> last = new ArrayList<>();
      double cost = 0;
      for (List<Choice> row : choices) {
        last.add(row.size() - 1);
        cost += row.getLast().cost();
      }
      return new Allotment(last, cost, Math.min(cost, lowerBound()));
    }
  }

  /**
   * The lights as they were solved.
   *
   * @param cost with what lights outside of their limits count
   * @param atLeast what is proved about it
   */
  private record Lights(LightsPlan plan, double cost, double atLeast) {}

  AdaptationProblem(
      SetupDocument setup,
      Figures original,
      Kit kit,
      Wishes wishes,
      Optional<Ev100> ambient,
      Trial trial) {
    this.setup = setup;
    this.wishes = wishes;
    this.weights = wishes.weights();
    this.original = original;
    this.moving = Gathering.isMoving(setup);
    this.ambient = ambient;
    this.cameras = CameraChoice.all(setup, kit, wishes.limits());
    this.kit = KitTonight.of(kit, wishes.tonight());
    Supplies supplies = new Supplies(this.kit, Gathering.pace(setup, wishes));
    this.search = new AllotmentSearch(supplies.amounts(), weights.pacePerSecond());
    Gathering gathering =
        new Gathering(
            setup,
            this.kit,
            supplies,
            new PairedReadings(setup, kit),
            wishes,
            weights,
            cameras.stream().map(camera -> CameraView.of(setup, camera)).toList(),
            trial);
    this.lights = new ArrayList<>();
    boolean all = true;
    for (LightFigures figures : original.lights()) {
      LightMakings.Found found = LightMakings.of(gathering, figures);
      all &= found.all();
      refusals.add(found.refusals());
      lights.add(light(figures, found.makings()));
    }
    this.looksAtAll = all;
    this.seenSomewhere =
        lights.stream().flatMap(l -> l.makings().stream()).anyMatch(m -> !m.seenBy().isEmpty());
    this.morePops =
        lights.stream()
            .anyMatch(l -> l.makings().stream().anyMatch(m -> m.pops() > l.light().pops()));
  }

  private LightRow.LightProblem light(LightFigures figures, List<Making> makings) {
    boolean leftOut =
        wishes.pins().stream().anyMatch(p -> p.light().equals(figures.light().id()) && !p.lit());
    return new LightRow.LightProblem(
        figures.light(),
        Weights.ofRole(figures.light().role()),
        wantedStops(figures),
        leftOut || wishes.limits().mayGiveUp().contains(figures.light().id()),
        wishes.limits().lightWithin().map(Stops::value).orElse(Double.POSITIVE_INFINITY),
        weights,
        makings);
  }

  /** A light's level in the picture against the shooting exposure; 0 where it is not known. */
  private double wantedStops(LightFigures figures) {
    return figures
        .inPicture()
        .map(level -> level.stopsOver(original.shootingExposure()).value())
        .orElse(0.0);
  }

  /** What every scene costs at the least: every light met exactly, with the gear there is. */
  double idealCost(BooleanSupplier stop) {
    return search
        .least(lights.stream().map(LightRow::ideal).toList(), Double.POSITIVE_INFINITY, stop)
        .map(Allotment::atLeast)
        .orElse(0.0);
  }

  /** What any way to make all the lights costs to carry, at the least. */
  double leastCarrying() {
    return lights.stream()
        .mapToDouble(
            light ->
                light.makings().stream()
                    .mapToDouble(making -> making.costs().carrying())
                    .min()
                    .orElse(0))
        .sum();
  }

  /** What a setting's lights cost at the least; quick. */
  double lightsAtLeast(int camera, CameraChoice.Setting setting) {
    return scene(camera, setting.exposure()).lowerBound();
  }

  /** The best that can be had at a setting, with what is proved about its lights. */
  Solved solve(
      int camera, CameraChoice.Setting setting, CameraCost cameraCost, BooleanSupplier stop) {
    Lights lights = scene(camera, setting.exposure()).solve(stop);
    return new Solved(
        new AdaptationPlan(camera, setting, cameraCost, lights.plan()),
        lights.cost(),
        lights.atLeast());
  }

  /**
   * A plan as it was solved.
   *
   * @param lightsCost of the lights, with what lights outside of their limits count
   * @param lightsAtLeast what is proved about it
   */
  record Solved(AdaptationPlan plan, double lightsCost, double lightsAtLeast) {}

  private Scene scene(int camera, ExposureSettings settings) {
    LuxSeconds shooting = settings.requiredExposure(MeterConstant.FLAT);
    double stops = Stops.ofRatio(shooting.value()).value();
    Optional<ShutterTable> table = table(camera, settings.time());
    SceneKey key =
        new SceneKey(
            Math.round(stops * 1e6),
            table,
            seenSomewhere ? camera : -1,
            morePops ? Optional.of(settings.time()) : Optional.empty());
    return scenes.computeIfAbsent(
        key, k -> new Scene(stops, table, camera, settings.time().seconds()));
  }

  /** What the shutter takes; nothing counts as no table, so that all such times are one scene. */
  private Optional<ShutterTable> table(int camera, ShutterTime time) {
    return cameras
        .get(camera)
        .body()
        .map(
            body ->
                tables.computeIfAbsent(
                    new TimeKey(camera, time), k -> ShutterTable.of(body, time, kit)))
        .filter(table -> !table.clear());
  }

  /** What a setting costs whatever the lights do. */
  CameraCost cameraCost(int camera, ExposureSettings settings) {
    CameraChoice choice = cameras.get(camera);
    ExposureSettings old = setup.exposure().settings();
    int touched =
        (settings.aperture().equals(old.aperture()) ? 0 : 1)
            + (settings.time().equals(old.time()) ? 0 : 1)
            + (settings.iso().equals(old.iso()) ? 0 : 1)
            + (settings.neutralDensity().equals(old.neutralDensity()) ? 0 : 1);
    return CameraCost.of(
        ambientMiss(settings),
        settings.aperture().stopsAbove(choice.wantedAperture()).value(),
        settings.time().stopsOver(old.time()).value(),
        settings.iso().stopsOver(choice.lowestIso()).value(),
        choice.framingDoublings(),
        moving,
        touched,
        weights);
  }

  /** How far the background's level moves; without an ambient reading, how far the EV moves. */
  private double ambientMiss(ExposureSettings settings) {
    Optional<Stops> wanted = original.ambient().map(AmbientFigures::offset);
    if (ambient.isEmpty() || wanted.isEmpty()) {
      return settings.ev100().minus(original.ev100()).value();
    }
    return Ambient.of(ambient.get()).offset(settings).minus(wanted.get()).value();
  }

  SetupDocument setup() {
    return setup;
  }

  Figures original() {
    return original;
  }

  Wishes wishes() {
    return wishes;
  }

  Weights weights() {
    return weights;
  }

  Optional<Ev100> ambient() {
    return ambient;
  }

  List<CameraChoice> cameras() {
    return cameras;
  }

  List<LightRow.LightProblem> lights() {
    return lights;
  }

  KitTonight kit() {
    return kit;
  }

  /** Why a light cannot be made at all, in words; empty where it can. */
  List<Said> refusals(int light) {
    return Objects.requireNonNull(refusals.get(light));
  }

  boolean looksAtAll() {
    return looksAtAll;
  }
}
