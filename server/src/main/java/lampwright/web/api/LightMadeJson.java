package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Seconds;
import lampwright.gear.Gel;
import lampwright.gear.Stand;
import lampwright.setup.adapting.AdaptedLight;
import lampwright.setup.figures.LightFigures;

/**
 * How a kit makes a light.
 *
 * @param heads how many of the head fire together
 * @param pops how often they fire for one picture
 * @param gels their names
 * @param stand its name; absent where the kit names none, or it needs none
 * @param distanceM from its face to its target
 * @param movedM against the setup; minus is nearer
 * @param power as the head's dial shows it
 * @param softnessChangeDoublings of its size as its target sees it; plus is softer
 * @param edgeLossStops what the shutter takes from an edge of the frame
 */
record LightMadeJson(
    String head,
    String modifier,
    int heads,
    int pops,
    List<String> gels,
    Optional<String> stand,
    double distanceM,
    double movedM,
    String power,
    double stopsDown,
    double shortfallStops,
    double excessStops,
    double deviationStops,
    double angularSizeDeg,
    double softnessChangeDoublings,
    double edgeLossStops,
    double energyWs,
    Optional<Double> recycleS,
    Optional<Double> flashesPerCharge,
    List<String> missing,
    LightFiguresJson.LevelJson level) {

  static LightMadeJson of(LightFigures was, AdaptedLight.Made made) {
    return new LightMadeJson(
        made.head().name(),
        made.modifier().name(),
        made.heads(),
        made.pops(),
        made.gels().stream().map(Gel::name).toList(),
        made.stand().map(Stand::name),
        made.distance().value(),
        made.distance().value() - was.distance().value(),
        made.powerShown(),
        made.power().set().value(),
        made.power().shortfall().value(),
        made.power().excess().value(),
        made.deviation().value(),
        made.angularSize().value(),
        made.softer(),
        made.edgeLoss().value(),
        made.energy().value(),
        made.recycle().map(Seconds::value),
        made.flashesPerCharge(),
        InEnglish.say(made.missing()),
        LightFiguresJson.LevelJson.of(made.level(), FiguresJson.Detail.FIGURES));
  }
}
