package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;

/** Turns each dial by a stop, both ways, and says what that changes at the first target. */
final class DialComputation {

  private static final Stops LESS = new Stops(-1);

  /** Rounding of doubles, in stops. */
  private static final double ROUNDING = 1e-9;

  private final SetupDocument setup;
  private final List<LightFigures> lights;
  private final TargetFigures target;
  private final Optional<Body> body;
  private final Optional<ShutterComputation> shutter;
  private final double flash;
  private final double ambient;

  private DialComputation(SetupDocument setup, List<LightFigures> lights, TargetFigures target) {
    this.setup = setup;
    this.lights = lights;
    this.target = target;
    this.body = setup.camera().flatMap(Camera::body);
    this.shutter = body.map(ShutterComputation::new);
    this.flash = target.sum().flash().value();
    this.ambient = target.sum().ambient().value();
  }

  /** All steps: the camera's dials, then the power of each light that is for the target. */
  static List<DialStep> of(
      SetupDocument setup, List<LightFigures> lights, List<TargetFigures> targets) {
    if (targets.isEmpty()) {
      return List.of();
    }
    DialComputation computation = new DialComputation(setup, lights, targets.getFirst());
    List<DialStep> steps = new ArrayList<>();
    for (Stops turned : List.of(LESS, Stops.ONE)) {
      steps.add(computation.both(DialStep.Dial.APERTURE, turned, computation.aperture(turned)));
      steps.add(computation.time(turned));
      steps.add(computation.both(DialStep.Dial.ISO, turned, computation.iso(turned)));
      steps.add(
          computation.both(DialStep.Dial.NEUTRAL_DENSITY, turned, computation.density(turned)));
      for (LightFigures light : lights) {
        computation.power(light, turned).ifPresent(steps::add);
      }
    }
    return steps;
  }

  /** A dial behind which flash and ambient are one. */
  private DialStep both(DialStep.Dial dial, Stops turned, Optional<DialLimit> limit) {
    double factor = turned.toFactor();
    return step(dial, Optional.empty(), turned, flash * factor, ambient * factor, limit);
  }

  private Optional<DialLimit> aperture(Stops turned) {
    ShootingExposure exposure = setup.exposure();
    FNumber wanted = exposure.fNumber().closedBy(turned.negated());
    return setup
        .camera()
        .flatMap(Camera::lens)
        .filter(
            lens ->
                wanted.value() < lens.widest().value() * (1 - ROUNDING)
                    || wanted.value() > lens.smallest().value() * (1 + ROUNDING))
        .map(DialLimit.OfLens::new);
  }

  private Optional<DialLimit> iso(Stops turned) {
    Iso iso = setup.exposure().iso();
    double wanted = iso.value() * turned.toFactor();
    return body.filter(
            b ->
                wanted < b.lowestIso().value() * (1 - ROUNDING)
                    || wanted > b.highestIso().value() * (1 + ROUNDING))
        .map(DialLimit.OfSpeeds::new);
  }

  private Optional<DialLimit> density(Stops turned) {
    double left = setup.exposure().neutralDensity().value() - turned.value();
    return left < -ROUNDING ? Optional.of(new DialLimit.OfDensity()) : Optional.empty();
  }

  private DialStep time(Stops turned) {
    ShutterTime wanted = setup.exposure().time().plus(turned);
    double changed = 0;
    Optional<DialLimit> limit = Optional.empty();
    for (LightFigures figures : lights) {
      double share = share(figures.light().id());
      if (shutter.isPresent()) {
        Light light = figures.light();
        Stops loss = shutter.get().wholeFrameLoss(light.head(), light.stopsDown(), wanted);
        changed += changed(share, loss, lossOf(figures));
        if (limit.isEmpty() && shutter.get().isOutOfReach(light.head(), wanted)) {
          limit =
              Optional.of(
                  new DialLimit.OfShutter(
                      shutter.get().effect(light.head(), light.stopsDown(), wanted)));
        }
      } else {
        changed += share;
      }
    }
    return step(
        DialStep.Dial.TIME, Optional.empty(), turned, changed, ambient * turned.toFactor(), limit);
  }

  /** A share with another loss in the shutter; most often there is none before and after. */
  private static double changed(double share, Stops loss, Stops before) {
    return loss.value() == before.value() ? share : share * loss.minus(before).negated().toFactor();
  }

  private static Stops lossOf(LightFigures figures) {
    return figures.shutter().map(ShutterEffect::wholeFrameOrNone).orElse(Stops.ZERO);
  }

  private double share(LightId light) {
    for (TargetFigures.Share share : target.shares()) {
      if (share.light().equals(light)) {
        return share.exposure().value();
      }
    }
    return 0;
  }

  /** Absent for a light that adds nothing here. */
  private Optional<DialStep> power(LightFigures figures, Stops turned) {
    Light light = figures.light();
    double share = share(light.id());
    if (share == 0) {
      return Optional.empty();
    }
    Optional<Stops> down = light.stopsDown().map(now -> now.minus(turned));
    boolean within =
        down.filter(
                d -> d.value() >= -ROUNDING && d.value() <= light.head().range().value() + ROUNDING)
            .isPresent();
    Stops loss =
        within
            ? shutter
                .map(
                    s ->
                        s.wholeFrameLoss(
                            light.head(), down.map(DialComputation::notAboveFull), time()))
                .orElse(Stops.ZERO)
            : lossOf(figures);
    double changed = changed(share * turned.toFactor(), loss, lossOf(figures));
    return Optional.of(
        step(
            DialStep.Dial.POWER,
            Optional.of(light.id()),
            turned,
            flash - share + changed,
            ambient,
            within || down.isEmpty()
                ? Optional.empty()
                : Optional.of(new DialLimit.OfPower(light, turned))));
  }

  private ShutterTime time() {
    return setup.exposure().time();
  }

  private static Stops notAboveFull(Stops down) {
    return new Stops(Math.max(0, down.value()));
  }

  private DialStep step(
      DialStep.Dial dial,
      Optional<LightId> light,
      Stops turned,
      double newFlash,
      double newAmbient,
      Optional<DialLimit> limit) {
    return new DialStep(
        dial,
        light,
        turned,
        target.sum(),
        new LightSum(new LuxSeconds(newFlash), new LuxSeconds(newAmbient)),
        limit);
  }
}
