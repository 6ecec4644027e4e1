package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.unit.BaseTwo;
import lampwright.language.Filling;
import lampwright.language.Said;

/** By how many stops a picture changes when one dial turns from the setup's mark to another. */
final class StopsBetween implements Maker {

  /** Farther turns are not made in one go. */
  private static final int MOST_THIRDS = 15;

  /**
   * A dial.
   *
   * @param stopsADoubling by how many stops the picture gets lighter when its number doubles
   */
  private record Dial(String word, MarkedScale scale, double value, double stopsADoubling) {}

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    ExposureSettings settings = material.setup().exposure().settings();
    Dial dial =
        dice.pick(
            List.of(
                new Dial("aperture", MarkedScale.APERTURE_THIRD, settings.aperture().value(), -2),
                new Dial("time", MarkedScale.SHUTTER_THIRD, settings.time().seconds(), 1),
                new Dial("iso", MarkedScale.ISO_THIRD, settings.iso().value(), 1)));
    List<MarkedScale.Mark> marks = dial.scale().marks();
    Optional<MarkedScale.Mark> from = dial.scale().findExact(dial.value());
    if (from.isEmpty()) {
      return Optional.empty();
    }
    int start = marks.indexOf(from.get());
    List<MarkedScale.Mark> others =
        IntStream.range(0, marks.size())
            .filter(i -> i != start && Math.abs(i - start) <= MOST_THIRDS)
            // Whole stops come up about as often as the more numerous thirds.
            .filter(i -> (i - start) % 3 == 0 || dice.flip())
            .mapToObj(marks::get)
            .toList();
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(drill(dial, from.get(), dice.pick(others)));
  }

  private static Drill drill(Dial dial, MarkedScale.Mark from, MarkedScale.Mark to) {
    double doublings = BaseTwo.log(to.exact() / from.exact());
    double stops = dial.stopsADoubling() * doublings;
    boolean isAperture = dial.stopsADoubling() < 0;
    double factor = BaseTwo.power(Math.abs(stops));
    Said counted =
        Said.of(
            isAperture
                ? "drilling.stopsBetween.slip.aperture"
                : "drilling.stopsBetween.slip.factor");
    return new Drill(
        DrillKind.STOPS_BETWEEN,
        List.of(),
        Said.of(
            "drilling.stopsBetween.question." + dial.word(),
            Filling.shown(from.text()),
            Filling.shown(to.text())),
        Fair.number(
            Measure.STOPS_COUNTED,
            stops,
            new Answer.Slip(-stops, Said.of("drilling.slip.sign." + dial.word())),
            new Answer.Slip(isAperture ? stops / 2 : Math.copySign(factor, stops), counted)),
        List.of(
            Said.of(
                "drilling.stopsBetween.why." + dial.word(),
                new Filling.Rounded(BaseTwo.power(Math.abs(doublings)), 2),
                new Filling.SignedBriefly(stops))),
        List.of());
  }
}
