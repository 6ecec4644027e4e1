package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.ShutterEffect;
import lampwright.setup.figures.UncertaintyBudget;

/**
 * The figures of one light.
 *
 * @param penumbraM width of a shadow's edge so far behind what throws it as {@code penumbraGapM}
 * @param fallOffAcrossStops from the near side of a subject so wide to its far side
 * @param inPictureLxS of its level what reaches the sensor's whole frame
 */
record LightFiguresJson(
    String id,
    String role,
    double distanceM,
    double azimuthDeg,
    double elevationDeg,
    Optional<String> pattern,
    double angularSizeDeg,
    double penumbraM,
    double penumbraGapM,
    Optional<Double> fallOffAcrossStops,
    double fallOffAcrossM,
    double inverseSquareErrorStops,
    double exposureAtFullPowerLxS,
    Optional<LevelJson> level,
    Optional<Double> computedMinusMeteredStops,
    Optional<Double> fromKeyStops,
    Optional<ShutterJson> shutter,
    Optional<Double> inPictureLxS,
    int pops,
    Optional<Double> energyWs,
    List<String> needs) {

  static LightFiguresJson of(LightFigures light, FiguresJson.Detail detail) {
    return new LightFiguresJson(
        light.light().id().text(),
        FiguresJson.word(light.light().role()),
        light.distance().value(),
        light.direction().azimuth().value(),
        light.direction().elevation().value(),
        light.pattern(),
        light.angularSize().value(),
        light.penumbra(LightFigures.USUAL_GAP).value(),
        LightFigures.USUAL_GAP.value(),
        light.fallOffAcross(LightFigures.USUAL_WIDTH).map(Stops::value),
        LightFigures.USUAL_WIDTH.value(),
        light.atTarget().inverseSquareError().value(),
        light.atTarget().atFullPower().value(),
        light.level().map(level -> LevelJson.of(level, detail)),
        light.computedMinusMetered().map(Stops::value),
        light.fromKey().map(Stops::value),
        light.shutter().map(shutter -> ShutterJson.of(shutter, detail)),
        light.inPicture().map(LuxSeconds::value),
        light.light().pops(),
        light.energy().map(WattSeconds::value),
        light.needs());
  }

  /**
   * How much light it gives, as the meter at the target gets it.
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
      List<PartJson> uncertaintyParts,
      Optional<WorkingJson> working) {

    static LevelJson of(Level level, FiguresJson.Detail detail) {
      return new LevelJson(
          level.exposure().value(),
          level.reading().value(),
          level.reading().tenthsText(),
          level.fromShooting().value(),
          FiguresJson.word(level.known()),
          level.uncertainty().value(),
          level.budget().parts().stream().map(PartJson::of).toList(),
          detail.tell(level::working));
    }
  }

  /** One cause of an uncertainty. */
  record PartJson(String name, double stops, String known) {

    static PartJson of(UncertaintyBudget.Part part) {
      return new PartJson(part.name(), part.deviation().value(), FiguresJson.word(part.known()));
    }
  }

  /** What the shutter takes from it. */
  record ShutterJson(
      boolean longBurst,
      Optional<Double> wholeFrameLossStops,
      Optional<Double> worstEdgeLossStops,
      double litShare,
      String known,
      List<String> warnings,
      Optional<List<WorkingJson>> workings) {

    static ShutterJson of(ShutterEffect effect, FiguresJson.Detail detail) {
      return new ShutterJson(
          effect.longBurst(),
          effect.wholeFrame().map(Stops::value),
          effect.worstEdge().map(Stops::value),
          effect.litShare(),
          FiguresJson.word(effect.known()),
          InEnglish.say(effect.warnings()),
          detail.tellAll(effect::workings));
    }
  }
}
