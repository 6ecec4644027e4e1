package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Several;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;

/** How many frames a charge gives at a power. */
final class FramesFromBattery implements Maker {

  private static final List<Integer> STOPS_DOWN = List.of(1, 2, 3, 4);
  private static final List<Integer> POPS = List.of(1, 1, 1, 2);

  /** More than that nobody takes in a day. */
  private static final double MOST_FRAMES = 6_000;

  private static final double LEAST_FRAMES = 20;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<Head> heads =
        material
            .kit()
            .map(kit -> kit.heads().stream().map(Several::item).toList())
            .orElseGet(() -> material.setup().lights().stream().map(Light::head).toList())
            .stream()
            .filter(head -> head.feed() == Head.Feed.BATTERY)
            .filter(head -> head.flashesPerCharge().isPresent())
            .toList();
    if (heads.isEmpty()) {
      return Optional.empty();
    }
    Head head = dice.pick(heads);
    int down = dice.pick(STOPS_DOWN);
    int pops = dice.pick(POPS);
    int full = head.flashesPerCharge().orElseThrow();
    double frames = full * new Stops(down).toFactor() / pops;
    if (down > head.range().value() || frames < LEAST_FRAMES || frames > MOST_FRAMES) {
      return Optional.empty();
    }
    String power = head.scale().show(new Stops(down), head.energy());
    return Optional.of(
        new Drill(
            DrillKind.FRAMES_FROM_BATTERY,
            List.of(
                Said.of(
                    "drilling.framesFromBattery.given",
                    Filling.text(head.name()),
                    Filling.number(full, 0)),
                Said.counted("drilling.framesFromBattery.pops", pops)),
            Said.of(
                "drilling.framesFromBattery.question",
                Filling.shown(power),
                new Filling.Briefly(down)),
            Fair.number(
                Measure.FRAMES,
                frames,
                new Answer.Slip(
                    full / new Stops(down).toFactor() / pops,
                    Said.of("drilling.framesFromBattery.slip.way")),
                new Answer.Slip(
                    (double) full * (down + 1) / pops,
                    Said.of("drilling.framesFromBattery.slip.line")),
                new Answer.Slip(frames * pops, Said.of("drilling.framesFromBattery.slip.pops")),
                new Answer.Slip(
                    (double) full / pops, Said.of("drilling.framesFromBattery.slip.full"))),
            List.of(
                Said.of(
                    "drilling.framesFromBattery.why",
                    new Filling.Rounded(new Stops(down).toFactor(), 0),
                    new Filling.Rounded(frames, 0)),
                Said.of("drilling.framesFromBattery.caution")),
            List.of()));
  }
}
