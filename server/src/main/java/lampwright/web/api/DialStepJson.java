package lampwright.web.api;

import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.figures.DialStep;

/**
 * What one stop on a dial changes at the first target.
 *
 * @param limit why the gear cannot do it, or only in part
 */
record DialStepJson(
    String dial,
    Optional<String> light,
    double turnedStops,
    Optional<Double> flashStops,
    Optional<Double> ambientStops,
    Optional<Double> totalStops,
    Optional<Double> flashOverAmbientStops,
    Optional<String> limit,
    Optional<WorkingJson> working) {

  static DialStepJson of(DialStep step, FiguresJson.Detail detail) {
    return new DialStepJson(
        FiguresJson.word(step.dial()),
        step.light().map(LightId::text),
        step.turned().value(),
        step.flash().map(Stops::value),
        step.ambient().map(Stops::value),
        step.total().map(Stops::value),
        step.balance().map(Stops::value),
        step.limit().map(said -> String.join(" ", InEnglish.say(said))),
        detail == FiguresJson.Detail.WORKINGS
            ? step.working().map(WorkingJson::of)
            : Optional.empty());
  }
}
