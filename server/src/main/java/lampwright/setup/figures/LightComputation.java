package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Gel;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.Pattern;
import lampwright.engine.light.Point;
import lampwright.engine.light.Pose;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Mired;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.setup.Light;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;

/** Computes the figures of one light: what the meter said, and what the engine says. */
public final class LightComputation {

  private final SetupDocument setup;
  private final ExposureSettings settings;
  private final LevelComputation levels;
  private final Optional<ShutterComputation> shutter;

  LightComputation(SetupDocument setup) {
    this.setup = setup;
    this.settings = setup.exposure().settings();
    this.levels = new LevelComputation(setup);
    this.shutter =
        setup.camera().flatMap(lampwright.setup.Camera::body).map(ShutterComputation::new);
  }

  /**
   * A light as the engine sees it.
   *
   * @param head which head stands there; it need not be the document's own
   * @param together a reading of that head with that modifier on, where there is one
   */
  public static LightAtTarget atTarget(
      SetupDocument setup,
      Light light,
      Head head,
      Modifier modifier,
      Optional<Output.ByReading> together) {
    return new LightAtTarget(
        output(head, together),
        modifier.effect(),
        gelOf(light),
        Pose.toward(light.place(), light.aim().orElse(light.target().at())),
        light.target().at(),
        receptor(setup, light.target()));
  }

  /** What a head gives, by a reading with the modifier on it where there is one. */
  public static HeadOutput output(Head head, Optional<Output.ByReading> together) {
    return together
        .map(Output.ByReading::toHeadOutputWithModifier)
        .orElseGet(() -> head.output().toHeadOutput());
  }

  private static Gel gelOf(Light light) {
    Stops loss = Stops.ZERO;
    Mired shift = Mired.ZERO;
    for (lampwright.gear.Gel gel : light.gels()) {
      loss = loss.plus(gel.loss());
      shift = shift.plus(gel.shift());
    }
    return new Gel(loss, shift);
  }

  /** What the meter at a target takes, by the way it is held. */
  private static Receptor receptor(SetupDocument setup, Target target) {
    return switch (target.held()) {
      case TOWARD_LIGHT -> new Receptor.TowardSource();
      case TOWARD_CAMERA -> new Receptor.Flat(towardCamera(setup, target.at()));
      case ON_SURFACE -> new Receptor.Flat(surfaceNormal(target));
    };
  }

  static UnitVector surfaceNormal(Target target) {
    double radians = target.surfaceFacing().orElse(new Degrees(0)).value() * (StrictMath.PI / 180);
    return UnitVector.of(StrictMath.sin(radians), -StrictMath.cos(radians), 0);
  }

  /** From a point to the camera; straight toward where cameras stand when its place is unknown. */
  static UnitVector towardCamera(SetupDocument setup, Point from) {
    Optional<Point> camera = setup.camera().flatMap(lampwright.setup.Camera::place);
    return camera
        .filter(place -> place.distanceTo(from).value() > 0.01)
        .map(place -> UnitVector.between(from, place))
        .orElse(UnitVector.TOWARD_CAMERA);
  }

  /** The figures of one light, without its level against the key. */
  LightFigures figures(Light light, PlacedLight placed, String pointer) {
    LightAtTarget atTarget = placed.atTarget();
    Optional<ShutterEffect> effect =
        shutter.map(s -> s.effect(light.head(), light.stopsDown(), settings.time()));
    boolean longBurst = effect.filter(ShutterEffect::longBurst).isPresent();
    List<String> needs = new ArrayList<>();
    Optional<Level> metered =
        light.reading().flatMap(reading -> metered(light, reading, placed, pointer, needs));
    Optional<Level> computed =
        light.stopsDown().flatMap(down -> levels.computed(light, placed, down, longBurst));
    if (light.stopsDown().isEmpty()) {
      needs.add(pointer + "/stops_down");
    }
    Optional<Level> level = metered.or(() -> computed);
    if (level.isEmpty() && light.stopsDown().isPresent()) {
      needs.add(pointer + (atTarget.cosine() > 0 ? "/aim" : "/target/held"));
    }
    Metres distance = atTarget.distance();
    shutter.ifPresent(s -> s.addNeeds(light.head(), pointer, settings.time(), needs));
    return new LightFigures(
        light,
        distance,
        direction(light),
        pattern(light),
        light.modifierOrStandard().face().angularSize(distance),
        atTarget,
        level,
        difference(computed, metered),
        Optional.empty(),
        effect,
        light.stopsDown().map(down -> energy(light, down)),
        needs);
  }

  /** A light as it stands in the setup, prepared for many points. */
  PlacedLight placed(Light light) {
    return new PlacedLight(
        light, atTarget(setup, light, light.head(), light.modifierOrStandard(), light.output()));
  }

  /** A dome's reading counts as what a flat receptor held the same way would get. */
  private Optional<Level> metered(
      Light light, MeterReading reading, PlacedLight placed, String pointer, List<String> needs) {
    if (reading.receptor() == MeterReading.Receptor.FLAT) {
      return levels.metered(light, reading, 1, pointer, needs);
    }
    Receptor.Dome dome =
        new Receptor.Dome(
            switch (placed.atTarget().receptor()) {
              case Receptor.TowardSource _ ->
                  UnitVector.between(light.target().at(), light.place());
              case Receptor.Flat flat -> flat.normal();
              case Receptor.Dome already -> already.axis();
            });
    double byDome = placed.geometry(dome);
    if (byDome == 0 || placed.geometry() == 0) {
      needs.add(pointer + "/target/held");
      return Optional.empty();
    }
    return levels.metered(light, reading, placed.geometry() / byDome, pointer, needs);
  }

  private Direction direction(Light light) {
    return setup
        .camera()
        .flatMap(lampwright.setup.Camera::place)
        .map(camera -> Direction.of(light.target().at(), light.place(), camera))
        .orElseGet(() -> Direction.of(light.target().at(), light.place()));
  }

  /** Patterns belong to a face: without a subject, or on a surface, there is none. */
  private Optional<String> pattern(Light light) {
    if (setup.subjects().isEmpty() || light.target().held() == Target.Held.ON_SURFACE) {
      return Optional.empty();
    }
    Degrees yaw = setup.subjects().getFirst().facing();
    return Optional.of(Pattern.of(direction(light).fromNose(yaw)).tradeName());
  }

  private static WattSeconds energy(Light light, Stops down) {
    double flashes = (double) light.heads() * light.pops();
    return new WattSeconds(light.head().energy().value() * flashes * down.negated().toFactor());
  }

  private static Optional<Stops> difference(Optional<Level> computed, Optional<Level> metered) {
    return computed.flatMap(c -> metered.map(m -> c.fromShooting().minus(m.fromShooting())));
  }
}
