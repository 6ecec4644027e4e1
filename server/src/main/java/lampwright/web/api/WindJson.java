package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import lampwright.engine.power.Beaufort;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.NewtonMetres;
import lampwright.engine.unit.Newtons;
import lampwright.setup.figures.WindFigures;

/** What the wind does to a light on its stand: a plausibility check, no permission. */
record WindJson(
    String light,
    double faceM2,
    double centreM,
    double massKg,
    double tippingRadiusM,
    double safetyFactor,
    double gustFactor,
    Optional<Integer> beaufort,
    Optional<String> beaufortName,
    Optional<Double> forceN,
    Optional<Double> momentNm,
    Optional<Double> ballastKg,
    Optional<SteadyJson> steady,
    @JsonProperty("speed_with_margin_m_per_s") double speedWithMarginMPerS,
    @JsonProperty("speed_at_which_it_goes_m_per_s") double speedAtWhichItGoesMPerS,
    @JsonProperty("gust_at_which_it_goes_m_per_s") double gustAtWhichItGoesMPerS,
    List<String> assumptions,
    List<String> cautions,
    Optional<List<WorkingJson>> workings) {

  static WindJson of(WindFigures wind, FiguresJson.Detail detail) {
    return new WindJson(
        wind.light().text(),
        wind.stand().face().value(),
        wind.stand().centre().value(),
        wind.stand().mass().value(),
        wind.stand().legs().tippingRadius().value(),
        WindFigures.SAFETY_FACTOR,
        WindFigures.GUST_FACTOR,
        wind.beaufort().map(Beaufort::number),
        wind.beaufort().map(Beaufort::tradeName),
        wind.force().map(Newtons::value),
        wind.moment().map(NewtonMetres::value),
        wind.ballast().map(Kilograms::value),
        wind.steady().map(SteadyJson::of),
        wind.speedWithMargin().value(),
        wind.speedAtWhichItGoes().value(),
        wind.gustAtWhichItGoes().value(),
        InEnglish.say(wind.assumptions()),
        InEnglish.say(WindFigures.CAUTIONS),
        detail.tellAll(wind::workings));
  }

  /** What the mean wind does without its gusts. */
  record SteadyJson(double forceN, double momentNm, double massNeededKg, double ballastKg) {

    static SteadyJson of(WindFigures.Push push) {
      return new SteadyJson(
          push.force().value(),
          push.moment().value(),
          push.massNeeded().value(),
          push.ballast().value());
    }
  }
}
