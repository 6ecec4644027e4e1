package lampwright.web.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.LightId;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.TargetFigures;

/** The figures of a setup, as the API tells them. Numbers are unrounded; keys carry the unit. */
public record FiguresJson(
    double ev100,
    double shootingExposureLxS,
    List<LightJson> lights,
    Optional<AmbientJson> ambient,
    List<TargetJson> targets,
    Optional<Double> energyPerFrameWs,
    List<String> needs,
    List<String> leftOut) {

  static FiguresJson of(Figures figures) {
    return new FiguresJson(
        figures.ev100().value(),
        figures.shootingExposure().value(),
        figures.lights().stream().map(LightJson::of).toList(),
        figures.ambient().map(AmbientJson::of),
        figures.targets().stream().map(TargetJson::of).toList(),
        figures.energyPerFrame().map(WattSeconds::value),
        figures.needs(),
        figures.leftOut());
  }

  /** One light. */
  record LightJson(
      String id,
      String role,
      double distanceM,
      double azimuthDeg,
      double elevationDeg,
      Optional<String> pattern,
      double angularSizeDeg,
      double inverseSquareErrorStops,
      double exposureAtFullPowerLxS,
      Optional<LevelJson> level,
      Optional<Double> computedMinusMeteredStops,
      Optional<Double> fromKeyStops,
      Optional<Double> energyWs,
      List<String> needs) {

    static LightJson of(LightFigures light) {
      return new LightJson(
          light.light().id().text(),
          word(light.light().role()),
          light.distance().value(),
          light.direction().azimuth().value(),
          light.direction().elevation().value(),
          light.pattern(),
          light.angularSize().value(),
          light.atTarget().inverseSquareError().value(),
          light.atTarget().atFullPower().value(),
          light.level().map(LevelJson::of),
          light.computedMinusMetered().map(Stops::value),
          light.fromKey().map(Stops::value),
          light.energy().map(WattSeconds::value),
          light.needs());
    }
  }

  /**
   * How much light one source gives.
   *
   * @param shown the reading as a meter with tenths shows it
   */
  record LevelJson(
      double exposureLxS,
      double fNumber,
      String shown,
      double fromShootingStops,
      String known,
      double uncertaintyStops,
      WorkingJson working) {

    static LevelJson of(Level level) {
      return new LevelJson(
          level.exposure().value(),
          level.reading().value(),
          level.reading().tenthsText(),
          level.fromShooting().value(),
          word(level.known()),
          level.uncertainty().value(),
          WorkingJson.of(level.working()));
    }
  }

  /** What the ambient does at the shooting exposure. */
  record AmbientJson(
      double ev100,
      String known,
      double exposureLxS,
      double offsetStops,
      double uncertaintyStops,
      WorkingJson working) {

    static AmbientJson of(AmbientFigures ambient) {
      return new AmbientJson(
          ambient.ambient().level().value(),
          word(ambient.ambient().known()),
          ambient.exposure().value(),
          ambient.offset().value(),
          ambient.uncertainty().value(),
          WorkingJson.of(ambient.working()));
    }
  }

  /**
   * All the light at one target.
   *
   * @param keyAndFillToFill as a ratio to one
   * @param ambientShare of all the light, 0 to 1
   */
  record TargetJson(
      String name,
      List<String> lights,
      double flashLxS,
      double ambientLxS,
      double fNumber,
      String shown,
      double offsetStops,
      double ambientShare,
      Optional<Double> keyAndFillToFill,
      WorkingJson working) {

    static TargetJson of(TargetFigures target) {
      return new TargetJson(
          target.target().name(),
          target.lights().stream().map(LightId::text).toList(),
          target.sum().flash().value(),
          target.sum().ambient().value(),
          target.reading().value(),
          target.reading().tenthsText(),
          target.offset().value(),
          target.sum().ambientShare(),
          target.ratio().map(LightingRatio::litToShadow),
          WorkingJson.of(target.working()));
    }
  }

  /** A constant's word in JSON. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
