package lampwright.setup.reacting;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Output;
import lampwright.setup.Ambient;
import lampwright.setup.BuildStep;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.Level;

/** Copies of setups and lights with a change. */
final class Changed {

  private Changed() {}

  /** The setup with other settings, lights and ambient; how the picture came out is not its own. */
  static SetupDocument setup(
      SetupDocument setup,
      ShootingExposure exposure,
      List<Light> lights,
      Optional<Ambient> ambient) {
    Set<LightId> lit = new HashSet<>();
    lights.forEach(light -> lit.add(light.id()));
    List<BuildStep> order =
        setup.buildOrder().stream()
            .filter(step -> step.light().isEmpty() || lit.contains(step.light().get()))
            .toList();
    return new SetupDocument(
        setup.title(),
        setup.intent(),
        setup.moods(),
        setup.genre(),
        setup.occasion(),
        exposure,
        setup.camera(),
        setup.subjects(),
        setup.surfaces(),
        lights,
        ambient,
        setup.plan(),
        order,
        setup.cautions(),
        List.of(),
        List.of());
  }

  /** The light with another power; its reading follows. */
  static Light power(Light light, Stops down) {
    Optional<MeterReading> reading =
        light
            .reading()
            .flatMap(read -> light.stopsDown().map(now -> turned(read, now.minus(down))));
    return copy(light, light.head(), light.heads(), light.output(), Optional.of(down), reading);
  }

  /** The light with so many of its heads; its reading follows. */
  static Light heads(Light light, int left) {
    Stops change = Stops.ofRatio((double) left / light.heads());
    return copy(
        light,
        light.head(),
        left,
        light.output(),
        light.stopsDown(),
        light.reading().map(read -> turned(read, change)));
  }

  /** The light with another head at full power. Its readings were the old head's, so they go. */
  static Light head(Light light, Head head) {
    return copy(
        light, head, light.heads(), Optional.empty(), Optional.of(Stops.ZERO), Optional.empty());
  }

  /** The light with another reading, or none. */
  static Light reading(Light light, Optional<MeterReading> reading) {
    return copy(light, light.head(), light.heads(), light.output(), light.stopsDown(), reading);
  }

  /** What a flat meter would give for one flash of the light alone. */
  static MeterReading alone(Light light, Level level) {
    LuxSeconds one = level.exposure().times(1.0 / light.pops());
    return new MeterReading(
        onMark(FNumber.ofExposure(one, level.settings().iso(), MeterConstant.FLAT)),
        0,
        Optional.of(level.settings().iso()),
        level.known(),
        false,
        MeterReading.Receptor.FLAT);
  }

  /** A reading of more or less light; one that does not change stays metered. */
  static MeterReading turned(MeterReading reading, Stops change) {
    if (change.value() == 0) {
      return reading;
    }
    MeterReading now = reading.turnedBy(change);
    return new MeterReading(
        onMark(now.printed()),
        now.tenths(),
        now.iso(),
        now.known(),
        now.includesAmbient(),
        now.receptor());
  }

  /** The mark itself where rounding of doubles is all that parts it, so that it can be written. */
  private static FNumber onMark(FNumber fNumber) {
    return MarkedScale.APERTURE_THIRD
        .findExact(fNumber.value())
        .or(() -> MarkedScale.APERTURE_HALF.findExact(fNumber.value()))
        .map(mark -> new FNumber(mark.exact()))
        .orElse(fNumber);
  }

  /** The ambient as somebody read it now, or guesses it. */
  static Ambient ambient(Optional<Ambient> old, Ev100 level, Known known) {
    return new Ambient(
        level,
        known,
        Optional.empty(),
        old.flatMap(Ambient::source),
        old.flatMap(Ambient::temperature));
  }

  private static Light copy(
      Light light,
      Head head,
      int heads,
      Optional<Output.ByReading> output,
      Optional<Stops> stopsDown,
      Optional<MeterReading> reading) {
    return new Light(
        light.id(),
        light.role(),
        light.reason(),
        head,
        heads,
        light.pops(),
        light.modifier(),
        output,
        light.gels(),
        light.place(),
        light.placeKnown(),
        light.aim(),
        light.target(),
        light.stand(),
        stopsDown,
        reading);
  }
}
