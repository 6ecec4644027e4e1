package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.Stops;
import lampwright.setup.figures.SpillFigures;

/** Everything that reaches a target, also what is for another. */
record SpillJson(List<ReachJson> reaches, SumsJson sums, Optional<WorkingJson> working) {

  static SpillJson of(SpillFigures spill, FiguresJson.Detail detail) {
    return new SpillJson(
        spill.reaches().stream().map(reach -> ReachJson.of(spill, reach)).toList(),
        SumsJson.of(spill.sums()),
        spill.working().flatMap(working -> detail.tell(() -> working)));
  }

  /**
   * One light there.
   *
   * @param forIt whether it is meant for this target
   * @param share of all the light there, 0 to 1
   */
  record ReachJson(
      String light,
      boolean forIt,
      double exposureLxS,
      Optional<Double> fromShootingStops,
      double share,
      String known) {

    static ReachJson of(SpillFigures spill, SpillFigures.Reach reach) {
      return new ReachJson(
          reach.light().text(),
          reach.forIt(),
          reach.exposure().value(),
          spill.fromShooting(reach).map(Stops::value),
          spill.share(reach),
          FiguresJson.word(reach.known()));
    }
  }

  /** The same light as differently held meters take it. */
  record SumsJson(SumJson towardCamera, Optional<SumJson> towardKey, Optional<SumJson> dome) {

    static SumsJson of(SpillFigures.Sums sums) {
      return new SumsJson(
          SumJson.of(sums.towardCamera(), sums.towardCameraOffset()),
          sums.towardKey().map(sum -> SumJson.of(sum, sums.towardKeyOffset())),
          sums.dome().map(sum -> SumJson.of(sum, sums.domeOffset())));
    }
  }

  /**
   * One sum.
   *
   * @param offsetStops from the shooting exposure; absent where it is dark
   */
  record SumJson(double flashLxS, double ambientLxS, Optional<Double> offsetStops) {

    static SumJson of(LightSum sum, Optional<Stops> offset) {
      return new SumJson(sum.flash().value(), sum.ambient().value(), offset.map(Stops::value));
    }
  }
}
