package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.language.Filling;
import lampwright.language.Said;

/** By how many stops a head's power must change so that a light that moved reads as before. */
final class PowerAfterMove implements Maker {

  /** Less is not worth a walk. */
  private static final double LEAST = 0.6;

  /** How far it goes, as a share of where it stands. */
  private static final List<Double> SHARES = List.of(0.5, 0.6, 0.7, 0.75, 1.25, 1.4, 1.5, 2.0);

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<Standing> lights =
        Standing.in(material).stream().filter(l -> l.light().stopsDown().isPresent()).toList();
    if (lights.isEmpty()) {
      return Optional.empty();
    }
    Standing light = dice.pick(lights);
    double toM = Fair.shown(light.distanceM() * dice.pick(SHARES), 1);
    Head head = light.light().head();
    Stops down = light.light().stopsDown().orElseThrow();
    return Standing.isPossible(toM)
        ? light
            .loses(toM)
            .filter(more -> Math.abs(more.value()) >= LEAST)
            .filter(more -> isOnTheDial(head, down.minus(more)))
            .map(more -> drill(light, toM, more, head.scale().show(down, head.energy())))
        : Optional.empty();
  }

  private static boolean isOnTheDial(Head head, Stops down) {
    return down.value() >= 0 && down.value() <= head.range().value();
  }

  private static Drill drill(Standing light, double toM, Stops more, String power) {
    double change = more.value();
    Filling name = Filling.text(Fair.quoted(light.light()));
    return new Drill(
        DrillKind.POWER_AFTER_MOVE,
        List.of(
            Said.of(
                "drilling.powerAfterMove.given",
                name,
                Filling.length(light.distanceM(), 1),
                new Filling.Where(light.light().target().where()),
                Filling.shown(power))),
        Said.of("drilling.powerAfterMove.question", Filling.length(toM, 1)),
        Fair.number(
            Measure.STOPS_SET,
            change,
            new Answer.Slip(change / 2, Said.of("drilling.slip.once")),
            new Answer.Slip(-change, Said.of("drilling.powerAfterMove.slip.sign")),
            new Answer.Slip(-change / 2, Said.of("drilling.powerAfterMove.slip.both")),
            new Answer.Slip(
                Math.copySign(Math.max(toM / light.distanceM(), light.distanceM() / toM), change),
                Said.of("drilling.powerAfterMove.slip.factor"))),
        List.of(
            Said.of(
                "drilling.powerAfterMove.why",
                new Filling.Rounded(toM / light.distanceM(), 2),
                new Filling.SignedBriefly(Fair.shown(change, 1)))),
        List.of(
            light
                .figures()
                .atTarget()
                .withDistance(new Metres(toM))
                .exposureWorking(
                    light.light().id().text(),
                    light.light().stopsDown().orElse(Stops.ZERO).minus(more))));
  }
}
