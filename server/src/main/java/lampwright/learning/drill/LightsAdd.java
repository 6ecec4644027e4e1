package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.figures.TargetFigures;

/** By how much two lights together are over the stronger of them, on a meter held alike. */
final class LightsAdd implements Maker {

  /** From here on the weaker adds less than one would answer. */
  private static final double MOST_APART = 2.5;

  /** The weaker one's dial is turned a little, in tenths: else a setup has only one such drill. */
  private static final List<Double> TURNS = List.of(-1.0, -0.7, -0.3, 0.0, 0.3, 0.7, 1.0);

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<TargetFigures> targets =
        material.figures().targets().stream().filter(t -> lit(t).size() >= 2).toList();
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    TargetFigures target = dice.pick(targets);
    List<TargetFigures.Share> two = dice.shuffled(lit(target)).subList(0, 2);
    double asItStands = two.getFirst().exposure().stopsOver(two.getLast().exposure()).value();
    double apart = Fair.shown(asItStands + dice.pick(TURNS), 1);
    if (apart < 0 || apart > MOST_APART) {
      return Optional.empty();
    }
    double sum = Stops.sumOfLight(List.of(Stops.ZERO, new Stops(-apart))).value();
    Filling strong = Filling.text("“" + two.getFirst().light() + "”");
    Filling weak = Filling.text("“" + two.getLast().light() + "”");
    return Optional.of(
        new Drill(
            DrillKind.LIGHTS_ADD,
            List.of(
                Said.of(
                    "drilling.lightsAdd.given",
                    new Filling.Where(target.target().where()),
                    strong,
                    weak,
                    Filling.number(apart, 1))),
            Said.of("drilling.lightsAdd.question", strong),
            Fair.number(
                Measure.STOPS_COUNTED,
                sum,
                new Answer.Slip(1, Said.of("drilling.lightsAdd.slip.always")),
                new Answer.Slip(0, Said.of("drilling.lightsAdd.slip.nothing")),
                new Answer.Slip(-apart, Said.of("drilling.lightsAdd.slip.difference")),
                new Answer.Slip(apart, Said.of("drilling.lightsAdd.slip.difference"))),
            List.of(
                Said.of(
                    "drilling.lightsAdd.why",
                    new Filling.Rounded(new Stops(-apart).toFactor(), 2),
                    Filling.number(sum, 2))),
            List.of()));
  }

  private static List<TargetFigures.Share> lit(TargetFigures target) {
    return target.shares().stream().filter(share -> share.exposure().value() > 0).toList();
  }
}
