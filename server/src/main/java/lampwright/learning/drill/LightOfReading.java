package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.LuxSeconds;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.figures.TargetFigures;

/** Which light did not fire, from what the meter reads less than before. */
final class LightOfReading implements Maker {

  /** A loss of less is not surely read. */
  private static final double LEAST_LOSS = 0.3;

  /** Losses that differ by less are not told apart. */
  private static final double APART = 0.35;

  private static final int MOST_OPTIONS = 5;

  /** A light, and by how much the meter reads less without it. */
  private record Missing(TargetFigures.Share share, double loss) {}

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<TargetFigures> targets =
        material.figures().targets().stream()
            .filter(target -> shares(target).count() >= 2)
            .toList();
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    TargetFigures target = dice.pick(targets);
    double total = target.sum().total().value();
    List<Missing> lights =
        shares(target)
            .filter(share -> share.exposure().value() < total * 0.999)
            .map(share -> new Missing(share, loss(target, share)))
            .toList();
    if (lights.size() < 2) {
      return Optional.empty();
    }
    Missing right = dice.pick(lights);
    List<Missing> others =
        lights.stream()
            .filter(l -> !l.equals(right) && Math.abs(l.loss() - right.loss()) >= APART)
            .toList();
    if (right.loss() < LEAST_LOSS || others.size() < lights.size() - 1) {
      return Optional.empty();
    }
    List<Missing> options = new ArrayList<>(others);
    while (options.size() >= MOST_OPTIONS) {
      options.remove(dice.pick(options));
    }
    options.add(right);
    return Optional.of(drill(material, target, right, dice.shuffled(options)));
  }

  private static Stream<TargetFigures.Share> shares(TargetFigures target) {
    return target.shares().stream().filter(share -> share.exposure().value() > 0);
  }

  private static double loss(TargetFigures target, TargetFigures.Share share) {
    return target.sum().total().stopsOver(without(target, share)).value();
  }

  private static LuxSeconds without(TargetFigures target, TargetFigures.Share share) {
    return new LuxSeconds(target.sum().total().value() - share.exposure().value());
  }

  private static Drill drill(
      Material material, TargetFigures target, Missing right, List<Missing> options) {
    ExposureSettings settings = material.setup().exposure().settings();
    return new Drill(
        DrillKind.LIGHT_OF_READING,
        List.of(
            Said.of(
                "drilling.lightOfReading.given",
                new Filling.Where(target.target().where()),
                reading(target.sum().total(), settings))),
        Said.of(
            "drilling.lightOfReading.question", reading(without(target, right.share()), settings)),
        Choosing.among(
            options,
            right,
            option ->
                Said.of(
                    "drilling.lightOfReading.option",
                    name(option),
                    reading(option.share().exposure(), settings)),
            option ->
                Optional.of(
                    Said.of(
                        "drilling.lightOfReading.slip",
                        new Filling.Briefly(Fair.shown(option.loss(), 1)),
                        new Filling.Briefly(Fair.shown(right.loss(), 1))))),
        List.of(
            Said.of(
                "drilling.lightOfReading.why",
                name(right),
                new Filling.Briefly(Fair.shown(right.loss(), 1)))),
        List.of(target.working()));
  }

  private static Filling name(Missing missing) {
    return Filling.text("“" + missing.share().light() + "”");
  }

  private static Filling reading(LuxSeconds exposure, ExposureSettings settings) {
    return Filling.shown(
        FNumber.ofExposure(exposure, settings.iso(), MeterConstant.FLAT).tenthsText());
  }
}
