package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.Ambient;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightComputation;
import lampwright.setup.figures.LightFigures;

/** A setup after something happened to it and before anybody touched it. */
final class Happened {

  private final Levels before;

  private Happened(Levels before) {
    this.before = before;
  }

  /** The setup, its readings said so that no change of ambient, time or ISO spoils them. */
  static Levels to(Levels before, Happening happening) {
    if (happening instanceof Happening.HeadDead(LightId id) && isTheOnlyHead(before, id)) {
      return Levels.of(readAlone(before)).without(Set.of(id));
    }
    return Levels.of(new Happened(before).after(happening));
  }

  private static boolean isTheOnlyHead(Levels before, LightId id) {
    List<Light> lights = before.setup().lights();
    return lights.size() == 1
        && lights.getFirst().id().equals(id)
        && lights.getFirst().heads() == 1;
  }

  /** The setup with readings of flash alone at an ISO that is said. */
  static SetupDocument readAlone(Levels before) {
    SetupDocument setup = before.setup();
    return Changed.setup(setup, setup.exposure(), new Happened(before).lights(), setup.ambient());
  }

  private SetupDocument after(Happening happening) {
    SetupDocument setup = before.setup();
    return switch (happening) {
      case Happening.AmbientReads(Ev100 level) -> withAmbient(level, Known.METERED);
      case Happening.AmbientFalls(Stops stops) ->
          setup
              .ambient()
              .map(ambient -> withAmbient(ambient.level().plus(stops.negated()), Known.ESTIMATED))
              .orElse(setup);
      case Happening.LightMoved(LightId id, Point place) ->
          withLight(id, light -> Optional.of(moved(light, place)));
      case Happening.HeadDead(LightId id) ->
          withLight(
              id,
              light ->
                  light.heads() > 1
                      ? Optional.of(Changed.heads(light, light.heads() - 1))
                      : Optional.empty());
    };
  }

  private SetupDocument withAmbient(Ev100 level, Known known) {
    Optional<Ambient> old = before.setup().ambient();
    return Changed.setup(
        before.setup(),
        before.setup().exposure(),
        lights(),
        Optional.of(Changed.ambient(old, level, known)));
  }

  private SetupDocument withLight(LightId id, Function<Light, Optional<Light>> change) {
    List<Light> lights = new ArrayList<>();
    for (Light light : lights()) {
      (light.id().equals(id) ? change.apply(light) : Optional.of(light)).ifPresent(lights::add);
    }
    return Changed.setup(
        before.setup(), before.setup().exposure(), lights, before.setup().ambient());
  }

  private List<Light> lights() {
    return before.setup().lights().stream().map(this::alone).toList();
  }

  private Light alone(Light light) {
    Optional<MeterReading> reading =
        light
            .reading()
            .flatMap(
                read ->
                    read.includesAmbient()
                        ? level(light).map(level -> Changed.alone(light, level))
                        : Optional.of(read.withIsoOr(before.setup().exposure().iso())));
    return Changed.reading(light, reading);
  }

  private Optional<Level> level(Light light) {
    return before.find(light.id()).flatMap(LightFigures::level);
  }

  /** A reading goes along as the model says; one that the model cannot follow is let go. */
  private Light moved(Light light, Point place) {
    Light there = light.withPlace(place);
    if (light.reading().isEmpty()) {
      return there;
    }
    Optional<MeterReading> read = level(light).map(level -> Changed.alone(light, level));
    double was = geometry(light);
    double is = geometry(there);
    return Changed.reading(
        there,
        was > 0 && is > 0
            ? read.map(reading -> Changed.turned(reading, Stops.ofRatio(is / was)))
            : Optional.empty());
  }

  private double geometry(Light light) {
    return LightComputation.atTarget(
            before.setup(), light, light.head(), light.modifierOrStandard(), light.output())
        .geometry();
  }
}
