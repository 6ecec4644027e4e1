package lampwright.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.AdaptedLight;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Remedy;
import lampwright.setup.figures.PowerFigures;

/**
 * A setup recomputed for a kit, as the API tells it.
 *
 * @param costs by what they are for, in small letters; together they are {@code costStops}
 * @param withoutWeight pieces that {@code carriedKg} leaves out, because nobody weighed them
 * @param betterIn than the best, in small letters like the costs; empty for the best
 * @param betweenFramesS the wait that the slowest head sets, as in the figures
 * @param framesPerCharge of the battery that is empty first, as in the figures
 */
public record AdaptationJson(
    SettingsJson settings,
    List<LightJson> lights,
    List<String> losses,
    double costStops,
    Map<String, Double> costs,
    double carriedKg,
    List<String> withoutWeight,
    Optional<Double> betweenFramesS,
    Optional<Double> framesPerCharge,
    List<String> betterIn,
    List<String> changes,
    List<RemedyJson> remedies,
    List<String> leftOut,
    Map<String, Object> document,
    FiguresJson figures) {

  /**
   * The whole answer.
   *
   * @param outcome {@code adapted} or {@code not_enough_gear}
   * @param adaptations the best first; with {@code not_enough_gear} the nearest thing, perhaps none
   * @param remedies in words
   * @param remediesChecked the same, with what each leaves
   * @param proof that nothing better exists, or how much better it could be
   */
  public record AnswerJson(
      String outcome,
      List<AdaptationJson> adaptations,
      List<String> reasons,
      List<String> unlit,
      List<String> remedies,
      List<RemedyJson> remediesChecked,
      ProofJson proof) {

    static AnswerJson of(Answer answer) {
      return switch (answer) {
        case Answer.Adapted adapted ->
            new AnswerJson(
                "adapted",
                adapted.adaptations().stream().map(AdaptationJson::of).toList(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                ProofJson.of(adapted.proof()));
        case Answer.NotEnoughGear falls ->
            new AnswerJson(
                "not_enough_gear",
                falls.nearest().stream().map(AdaptationJson::of).toList(),
                InEnglish.say(falls.reasons()),
                falls.unlit().stream().map(LightId::text).toList(),
                falls.remedies().stream().map(Remedy::words).map(InEnglish::say).toList(),
                falls.remedies().stream().map(RemedyJson::of).toList(),
                ProofJson.of(falls.proof()));
      };
    }
  }

  static AdaptationJson of(Adaptation adaptation) {
    return new AdaptationJson(
        SettingsJson.of(adaptation),
        adaptation.lights().stream().map(LightJson::of).toList(),
        InEnglish.say(adaptation.losses()),
        adaptation.cost(),
        costs(adaptation),
        adaptation.carried().kg(),
        adaptation.carried().withoutWeight(),
        adaptation.figures().power().pace().map(pace -> pace.betweenFrames().value()),
        adaptation.figures().power().charge().map(PowerFigures.Charge::frames),
        adaptation.betterIn().stream().map(FiguresJson::word).toList(),
        InEnglish.say(adaptation.changes()),
        adaptation.remedies().stream().map(RemedyJson::of).toList(),
        InEnglish.say(adaptation.leftOut()),
        SetupDocument.FORM.writeObject(adaptation.document()),
        FiguresJson.of(adaptation.figures(), FiguresJson.Detail.FIGURES));
  }

  private static Map<String, Double> costs(Adaptation adaptation) {
    Map<String, Double> costs = new LinkedHashMap<>();
    adaptation.costs().forEach((matter, stops) -> costs.put(FiguresJson.word(matter), stops));
    return costs;
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
  record LightJson(String id, String role, boolean lit, Optional<LightMadeJson> made) {

    static LightJson of(AdaptedLight light) {
      return new LightJson(
          light.original().light().id().text(),
          FiguresJson.word(light.original().light().role()),
          light.made().isPresent(),
          light.made().map(made -> LightMadeJson.of(light.original(), made)));
    }
  }
}
