package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.figures.Level;
import lampwright.setup.used.ComparedLight;
import lampwright.setup.used.PlannedAgainstUsed;
import lampwright.tasks.Recorded;

/**
 * What was really used of a setup against what was planned; differences are plus for more light.
 */
record UsedJson(
    String setup,
    int revision,
    int plannedRevision,
    Instant changedAt,
    String changedBy,
    Optional<String> note,
    CameraJson camera,
    List<ComparedJson> compared) {

  static UsedJson of(Recorded recorded) {
    PlannedAgainstUsed both = PlannedAgainstUsed.of(recorded.planned(), recorded.used());
    return new UsedJson(
        recorded.id().text(),
        recorded.revision(),
        recorded.plannedRevision(),
        recorded.changedAt(),
        recorded.changedBy(),
        Optional.of(recorded.note()).filter(note -> !note.isEmpty()),
        CameraJson.of(both),
        both.lights().stream().map(ComparedJson::of).toList());
  }

  /** What the camera was set to, as documents write it, and what the differences do. */
  record CameraJson(
      Map<String, Object> planned,
      Map<String, Object> used,
      double apertureStops,
      double timeStops,
      double isoStops,
      double neutralDensityStops,
      double flashStops,
      double ambientStops) {

    static CameraJson of(PlannedAgainstUsed both) {
      return new CameraJson(
          both.planned().toDocument(),
          both.used().toDocument(),
          both.apertureDifference().value(),
          both.timeDifference().value(),
          both.isoDifference().value(),
          both.neutralDensityDifference().value(),
          both.flashDifference().value(),
          both.ambientDifference().value());
    }
  }

  /**
   * One light.
   *
   * @param plannedFNumber what a meter at the ISO that was used was expected to show
   * @param plannedFromShootingStops from the planned shooting exposure, the used one from the used
   * @param differenceStops of the light at its target
   * @param fromShootingDifferenceStops with what the camera was set to
   */
  record ComparedJson(
      String light,
      String role,
      boolean asPlanned,
      Optional<Double> plannedStopsDown,
      Optional<Double> usedStopsDown,
      Optional<Double> powerDifferenceStops,
      @JsonProperty("planned_f_number") Optional<Double> plannedFNumber,
      Optional<String> plannedKnown,
      Optional<Double> plannedUncertaintyStops,
      @JsonProperty("used_f_number") Optional<Double> usedFNumber,
      Optional<String> usedKnown,
      Optional<Double> plannedFromShootingStops,
      Optional<Double> usedFromShootingStops,
      Optional<Double> differenceStops,
      Optional<Double> fromShootingDifferenceStops,
      double plannedDistanceM,
      double usedDistanceM,
      String plannedHead,
      String usedHead) {

    static ComparedJson of(ComparedLight light) {
      Light was = light.planned().light();
      Light now = light.used().light();
      Optional<Level> planned = light.planned().level();
      Optional<Level> used = light.used().level();
      return new ComparedJson(
          was.id().text(),
          FiguresJson.word(was.role()),
          light.isAsPlanned(),
          was.stopsDown().map(Stops::value),
          now.stopsDown().map(Stops::value),
          light.powerDifference().map(Stops::value),
          light.expected().map(FNumber::value),
          planned.map(Level::known).map(FiguresJson::word),
          planned.map(Level::uncertainty).map(Stops::value),
          used.map(Level::reading).map(FNumber::value),
          used.map(Level::known).map(FiguresJson::word),
          planned.map(Level::fromShooting).map(Stops::value),
          used.map(Level::fromShooting).map(Stops::value),
          light.levelDifference().map(Stops::value),
          light.fromShootingDifference().map(Stops::value),
          light.planned().distance().value(),
          light.used().distance().value(),
          was.head().name(),
          now.head().name());
    }
  }
}
