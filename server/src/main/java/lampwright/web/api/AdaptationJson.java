package lampwright.web.api;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight;
import lampwright.setup.adapting.Answer;

/** A setup recomputed for a kit, as the API tells it. */
public record AdaptationJson(
    SettingsJson settings,
    List<LightJson> lights,
    List<String> losses,
    double costStops,
    List<String> leftOut,
    Map<String, Object> document,
    FiguresJson figures) {

  /**
   * The whole answer.
   *
   * @param outcome {@code adapted} or {@code not_enough_gear}
   * @param adaptations the best first; with {@code not_enough_gear} the nearest thing, perhaps none
   */
  public record AnswerJson(
      String outcome,
      List<AdaptationJson> adaptations,
      List<String> reasons,
      List<String> unlit,
      List<String> remedies) {

    static AnswerJson of(Answer answer) {
      return switch (answer) {
        case Answer.Adapted adapted ->
            new AnswerJson(
                "adapted",
                adapted.adaptations().stream().map(AdaptationJson::of).toList(),
                List.of(),
                List.of(),
                List.of());
        case Answer.NotEnoughGear falls ->
            new AnswerJson(
                "not_enough_gear",
                falls.nearest().stream().map(AdaptationJson::of).toList(),
                falls.reasons(),
                falls.unlit().stream().map(LightId::text).toList(),
                falls.remedies());
      };
    }
  }

  static AdaptationJson of(Adaptation adaptation) {
    return new AdaptationJson(
        SettingsJson.of(adaptation),
        adaptation.lights().stream().map(LightJson::of).toList(),
        adaptation.losses(),
        adaptation.cost(),
        adaptation.leftOut(),
        SetupDocument.FORM.writeObject(adaptation.document()),
        FiguresJson.of(adaptation.figures(), FiguresJson.Detail.FIGURES));
  }

  /** The camera: what it is set to, and what that does to the look. */
  record SettingsJson(
      String fNumber,
      String time,
      String iso,
      double neutralDensityStops,
      Optional<String> neutralDensity,
      double ev100,
      Optional<String> body,
      Optional<String> lens,
      Optional<Double> ambientOffsetStops,
      Optional<Double> ambientChangeStops,
      double depthChangeStops,
      Optional<Double> framingChangeShare) {

    static SettingsJson of(Adaptation adaptation) {
      return new SettingsJson(
          adaptation.settings().aperture().toString(),
          adaptation.settings().time().toString(),
          adaptation.settings().iso().toString(),
          adaptation.settings().neutralDensity().value(),
          adaptation.neutralDensity(),
          adaptation.settings().ev100().value(),
          adaptation.body().map(Body::name),
          adaptation.lens().map(Lens::name),
          adaptation.ambientOffset().map(Stops::value),
          adaptation.ambientChange().map(Stops::value),
          adaptation.depthChange().value(),
          adaptation.framingChange());
    }
  }

  /** One light against the setup's own; the head's fields are absent where it is given up. */
  record LightJson(String id, String role, boolean lit, Optional<MadeJson> made) {

    static LightJson of(AdaptedLight light) {
      return new LightJson(
          light.original().light().id().text(),
          FiguresJson.word(light.original().light().role()),
          light.made().isPresent(),
          light.made().map(MadeJson::of));
    }
  }

  /**
   * How the kit makes a light.
   *
   * @param power as the head's dial shows it
   */
  record MadeJson(
      String head,
      String modifier,
      String power,
      double stopsDown,
      double shortfallStops,
      double excessStops,
      double deviationStops,
      double angularSizeDeg,
      double energyWs,
      Optional<Double> recycleS,
      Optional<Double> flashesPerCharge,
      List<String> missing,
      List<String> remedies,
      LightFiguresJson.LevelJson level) {

    static MadeJson of(AdaptedLight.Made made) {
      return new MadeJson(
          made.head().name(),
          made.modifier().name(),
          made.powerShown(),
          made.power().set().value(),
          made.power().shortfall().value(),
          made.power().excess().value(),
          made.deviation().value(),
          made.angularSize().value(),
          made.energy().value(),
          made.recycle().map(Seconds::value),
          made.flashesPerCharge(),
          made.missing(),
          made.remedies(),
          LightFiguresJson.LevelJson.of(made.level(), FiguresJson.Detail.FIGURES));
    }
  }
}
