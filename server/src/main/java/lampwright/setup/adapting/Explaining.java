package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Stand;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.ShutterEffect;

/** Says of a plan what it gives against the setup; the figures are those of its own document. */
final class Explaining {

  private final AdaptationProblem problem;
  private final SetupDocument setup;
  private final Figures original;
  private final Kit kit;
  private final NewConditions conditions;

  Explaining(AdaptationProblem problem, Kit kit, NewConditions conditions) {
    this.problem = problem;
    this.setup = problem.setup();
    this.original = problem.original();
    this.kit = kit;
    this.conditions = conditions;
  }

  Adaptation of(AdaptationPlan plan, List<Matter> betterIn, List<Remedy> remedies) {
    ExposureSettings settings = plan.setting().exposure();
    CameraChoice camera = problem.cameras().get(plan.camera());
    List<Optional<Stand>> stands = StandChoice.of(problem, plan);
    SetupDocument document = new AdaptedDocument(problem, kit, conditions).of(plan, stands);
    Figures figures = FiguresComputation.of(document);
    List<AdaptedLight> lights = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      lights.add(light(i, plan, stands.get(i), figures));
    }
    Optional<Stops> offset = conditions.ambient().map(level -> Ambient.of(level).offset(settings));
    Optional<Stops> change = offset.flatMap(o -> original.ambient().map(a -> o.minus(a.offset())));
    Stops depth = new Stops(plan.cameraCost().depthStops());
    return new Adaptation(
        document,
        figures,
        settings,
        camera.body(),
        camera.lens(),
        plan.setting().filter().map(lampwright.gear.NeutralDensity::name),
        offset,
        change,
        depth,
        camera.framingChange(),
        lights,
        new Losses(
                setup, settings, change, depth, camera.framingChange(), lights, problem.weights())
            .inWords(),
        plan.cost(),
        plan.costs(),
        Carrying.of(problem, plan, stands),
        betterIn,
        Changes.inWords(setup, document),
        remedies,
        leftOut());
  }

  private List<Said> leftOut() {
    List<Said> leftOut = new ArrayList<>(conditions.remarks());
    if (!problem.wishes().limits().lightsMayMove()) {
      leftOut.add(Said.of("adapting.left.noneMoved"));
    } else if (problem.cameras().stream()
        .allMatch(camera -> CameraView.of(setup, camera).isEmpty())) {
      leftOut.add(Said.of("adapting.left.cameraUnknown"));
    }
    if (!problem.looksAtAll()) {
      leftOut.add(Said.of("adapting.left.notAllTried"));
    }
    return leftOut;
  }

  private AdaptedLight light(
      int index, AdaptationPlan plan, Optional<Stand> stand, Figures figures) {
    LightFigures old = original.lights().get(index);
    Optional<LightRow.Lit> lit = plan.lit().get(index);
    if (lit.isEmpty()) {
      return new AdaptedLight(old, Optional.empty());
    }
    return new AdaptedLight(old, made(old, lit.get(), stand, figures));
  }

  private Optional<AdaptedLight.Made> made(
      LightFigures old, LightRow.Lit lit, Optional<Stand> stand, Figures figures) {
    LightFigures now = figures.get(old.light().id());
    Optional<LuxSeconds> before = old.inPicture();
    Optional<LuxSeconds> after = now.inPicture();
    if (before.isEmpty() || after.isEmpty() || now.level().isEmpty()) {
      return Optional.empty();
    }
    Making making = lit.making();
    PowerSetting power = making.dial().setting(lit.exact(), lit.step(), lit.miss());
    double share = power.set().negated().toFactor();
    Stops deviation =
        after
            .get()
            .stopsOver(figures.shootingExposure())
            .minus(before.get().stopsOver(original.shootingExposure()));
    Head head = making.head();
    double flashes = (double) making.heads() * making.pops();
    return Optional.of(
        new AdaptedLight.Made(
            head,
            making.modifier(),
            making.heads(),
            making.pops(),
            making.gels(),
            stand,
            now.distance(),
            now.distance().value() - old.distance().value(),
            power,
            now.level().get(),
            deviation,
            now.angularSize(),
            Likeness.doublings(old.angularSize(), now.angularSize()),
            now.shutter().flatMap(ShutterEffect::worstEdge).orElse(Stops.ZERO),
            new WattSeconds(head.energy().value() * share * flashes),
            recycle(making, share),
            head.flashesPerCharge().map(full -> full / (share * making.pops())),
            missingGels(old.light(), making)));
  }

  private Optional<Seconds> recycle(Making making, double share) {
    if (making.onPack().isEmpty()) {
      return making.head().recycle().map(full -> new Seconds(full.value() * share * making.pops()));
    }
    var pack = problem.kit().packs().get(making.onPack().get().index()).pack();
    double energy = making.head().energy().value() * share * making.heads() * making.pops();
    return pack.recycle().map(full -> new Seconds(full.value() * energy / pack.energy().value()));
  }

  /** Gels of the setup that the kit has nothing like, within what one would just see. */
  private List<Said> missingGels(Light light, Making making) {
    List<Said> missing = new ArrayList<>();
    if (!making.gels().equals(light.gels())) {
      return missing;
    }
    for (Gel gel : light.gels()) {
      boolean has =
          kit.gels().stream()
              .anyMatch(
                  g ->
                      Math.abs(g.item().shift().value() - gel.shift().value())
                          <= Losses.SEEN_MIRED);
      if (!has) {
        missing.add(Said.of("adapting.left.noSuchGel", Filling.text(gel.name())));
      }
    }
    return missing;
  }
}
