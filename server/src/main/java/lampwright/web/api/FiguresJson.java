package lampwright.web.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import lampwright.engine.Working;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.LightId;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FlashAgainstAmbient;
import lampwright.setup.figures.TargetFigures;
import lampwright.setup.figures.UnlitTarget;

/**
 * The figures of a setup, as the API tells them. Numbers are unrounded; keys carry the unit. The
 * workings are told where they are asked for.
 */
public record FiguresJson(
    double ev100,
    double shootingExposureLxS,
    List<LightFiguresJson> lights,
    Optional<AmbientJson> ambient,
    List<TargetJson> targets,
    List<UnlitTargetJson> unlitTargets,
    Optional<AgainstAmbientJson> flashAgainstAmbient,
    List<DialStepJson> dials,
    Optional<OpticsJson> optics,
    List<MovementJson> movements,
    List<PathJson> paths,
    Optional<SunJson.ThenJson> sun,
    List<WindJson> winds,
    PowerJson power,
    ColourJson colour,
    Optional<Double> energyPerFrameWs,
    List<String> needs,
    List<String> leftOut) {

  /** Whether the steps to each figure are told too. */
  enum Detail {
    FIGURES,
    WORKINGS;

    Optional<WorkingJson> tell(Supplier<Working> working) {
      return this == WORKINGS ? Optional.of(WorkingJson.of(working.get())) : Optional.empty();
    }

    Optional<List<WorkingJson>> tellAll(Supplier<List<Working>> workings) {
      return this == WORKINGS ? Optional.of(WorkingJson.list(workings.get())) : Optional.empty();
    }
  }

  static FiguresJson of(Figures figures, Detail detail) {
    return new FiguresJson(
        figures.ev100().value(),
        figures.shootingExposure().value(),
        figures.lights().stream().map(light -> LightFiguresJson.of(light, detail)).toList(),
        figures.ambient().map(ambient -> AmbientJson.of(ambient, detail)),
        figures.targets().stream().map(target -> TargetJson.of(target, detail)).toList(),
        figures.unlit().stream().map(target -> UnlitTargetJson.of(target, detail)).toList(),
        figures.againstAmbient().map(balance -> AgainstAmbientJson.of(balance, detail)),
        figures.dials().stream().map(step -> DialStepJson.of(step, detail)).toList(),
        figures.optics().map(optics -> OpticsJson.of(optics, detail)),
        figures.movements().stream().map(move -> MovementJson.of(move, detail)).toList(),
        figures.paths().stream().map(path -> PathJson.of(path, detail)).toList(),
        figures.sun().map(SunJson.ThenJson::of),
        figures.winds().stream().map(wind -> WindJson.of(wind, detail)).toList(),
        PowerJson.of(figures.power(), detail),
        ColourJson.of(figures.colour(), detail),
        figures.energyPerFrame().map(WattSeconds::value),
        figures.needs(),
        InEnglish.say(figures.leftOut()));
  }

  /** What the ambient does at the shooting exposure. */
  record AmbientJson(
      double ev100,
      String known,
      double exposureLxS,
      double offsetStops,
      double uncertaintyStops,
      Optional<WorkingJson> working) {

    static AmbientJson of(AmbientFigures ambient, Detail detail) {
      return new AmbientJson(
          ambient.ambient().level().value(),
          word(ambient.ambient().known()),
          ambient.exposure().value(),
          ambient.offset().value(),
          ambient.uncertainty().value(),
          detail.tell(ambient::working));
    }
  }

  /** A target to which its own lights give nothing toward the camera, without an ambient. */
  record UnlitTargetJson(String name, List<String> lights, SpillJson spill) {

    static UnlitTargetJson of(UnlitTarget target, Detail detail) {
      return new UnlitTargetJson(
          target.target().name(),
          target.lights().stream().map(LightId::text).toList(),
          SpillJson.of(target.spill(), detail));
    }
  }

  /**
   * All the light at one target.
   *
   * @param keyAndFillToFill as a ratio to one
   * @param ambientShare of all the light, 0 to 1: how strong the ghost of a moving subject is
   */
  record TargetJson(
      String name,
      List<String> lights,
      List<ShareJson> shares,
      double flashLxS,
      double ambientLxS,
      double fNumber,
      String shown,
      double offsetStops,
      double uncertaintyStops,
      double ambientShare,
      Optional<Double> flashOverAmbientStops,
      Optional<Double> keyAndFillToFill,
      Optional<Double> contrastStops,
      SpillJson.SumsJson sums,
      SpillJson spill,
      Optional<WorkingJson> working) {

    static TargetJson of(TargetFigures target, Detail detail) {
      return new TargetJson(
          target.target().name(),
          target.lights().stream().map(LightId::text).toList(),
          target.shares().stream().map(ShareJson::of).toList(),
          target.sum().flash().value(),
          target.sum().ambient().value(),
          target.reading().value(),
          target.reading().tenthsText(),
          target.offset().value(),
          target.uncertainty().value(),
          target.sum().ambientShare(),
          target.flashOverAmbient().map(Stops::value),
          target.ratio().map(LightingRatio::litToShadow),
          target.contrast().map(Stops::value),
          SpillJson.SumsJson.of(target.sums()),
          SpillJson.of(target.spill(), detail),
          detail.tell(target::working));
    }
  }

  /** What one light adds to a target's sum. */
  record ShareJson(String light, double exposureLxS, String known) {

    static ShareJson of(TargetFigures.Share share) {
      return new ShareJson(share.light().text(), share.exposure().value(), word(share.known()));
    }
  }

  /** The balance of flash and ambient at the first target. */
  record AgainstAmbientJson(
      String target,
      double flashLxS,
      double ambientLx,
      double timeS,
      double flashOverAmbientStops,
      String inWords,
      Optional<WorkingJson> working) {

    static AgainstAmbientJson of(FlashAgainstAmbient balance, Detail detail) {
      return new AgainstAmbientJson(
          balance.target().name(),
          balance.flash().value(),
          balance.ambient().value(),
          balance.time().seconds(),
          balance.balance().value(),
          InEnglish.say(FlashAgainstAmbient.IN_WORDS),
          detail.tell(balance::working));
    }
  }

  /** A constant's word in JSON. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
