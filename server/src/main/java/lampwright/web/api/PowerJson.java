package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.LightId;
import lampwright.setup.figures.HeatFigures;
import lampwright.setup.figures.MainsFigures;
import lampwright.setup.figures.PowerFigures;

/** What the pictures cost in energy and time. */
record PowerJson(
    List<LightPowerJson> lights,
    Optional<Double> energyPerFrameWs,
    Optional<PaceJson> pace,
    Optional<ChargeJson> charge,
    Optional<MainsJson> mains,
    Optional<HeatJson> heat,
    Optional<WishJson> wish,
    Optional<List<WorkingJson>> workings) {

  static PowerJson of(PowerFigures power, FiguresJson.Detail detail) {
    return new PowerJson(
        power.lights().stream().map(LightPowerJson::of).toList(),
        power.energyPerFrame().map(WattSeconds::value),
        power.pace().map(PaceJson::of),
        power.charge().map(ChargeJson::of),
        power.mains().map(MainsJson::of),
        power.heat().map(HeatJson::of),
        power.wish().map(WishJson::of),
        detail.tellAll(power::workings));
  }

  /** One light. */
  record LightPowerJson(
      String light, double energyWs, Optional<Double> recycleS, Optional<Double> framesPerCharge) {

    static LightPowerJson of(PowerFigures.LightPower power) {
      return new LightPowerJson(
          power.light().id().text(),
          power.energy().value(),
          power.recycle().map(Seconds::value),
          power.framesPerCharge());
    }
  }

  /** The slowest light sets the pace. */
  record PaceJson(String slowest, double betweenFramesS, double framesPerSecond) {

    static PaceJson of(PowerFigures.Pace pace) {
      return new PaceJson(
          pace.slowest().text(), pace.betweenFrames().value(), pace.framesPerSecond());
    }
  }

  /** The battery that is empty first. */
  record ChargeJson(String first, double frames) {

    static ChargeJson of(PowerFigures.Charge charge) {
      return new ChargeJson(charge.first().text(), charge.frames());
    }
  }

  /** What the heads on the mains draw while all charge: no permission to plug in. */
  record MainsJson(
      List<String> lights,
      double volts,
      double powerFactor,
      double chargingW,
      double modellingW,
      double totalW,
      double currentA,
      double generatorVa,
      Optional<Double> averageW,
      List<String> assumptions,
      List<String> cautions) {

    static MainsJson of(MainsFigures mains) {
      return new MainsJson(
          mains.lights().stream().map(LightId::text).toList(),
          mains.mains().voltage().value(),
          mains.mains().powerFactor(),
          mains.charging().value(),
          mains.modelling().value(),
          mains.total().value(),
          mains.current().value(),
          mains.generator().value(),
          mains.average().map(average -> average.power().value()),
          InEnglish.say(mains.assumptions()),
          InEnglish.say(MainsFigures.CAUTIONS));
    }
  }

  /** The head that gets hottest. */
  record HeatJson(
      String hottest,
      double averageW,
      double flashesPerMinute,
      double modellingW,
      boolean planned) {

    static HeatJson of(HeatFigures heat) {
      return new HeatJson(
          heat.hottest().text(),
          heat.load().average().value(),
          heat.load().flashesPerMinute(),
          heat.load().modelling().value(),
          heat.isPaceOfPlan());
    }
  }

  /** How the plan fares. */
  record WishJson(
      Optional<Double> betweenFramesS,
      Optional<Integer> frames,
      Optional<Boolean> keepsPace,
      Optional<Integer> charges) {

    static WishJson of(PowerFigures.Wish wish) {
      return new WishJson(
          wish.betweenFrames().map(Seconds::value),
          wish.frames(),
          wish.keepsPace(),
          wish.charges());
    }
  }
}
