package lampwright.setup.takes;

import java.util.List;
import java.util.Optional;
import lampwright.document.Reading;
import lampwright.engine.light.Remedy;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Used;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.used.UsedDocument;

/**
 * A reading of the day against what the figures of the setup that was shot let expect.
 *
 * @param expected absent where the setup does not say enough, or has no such light
 * @param metered the light alone, the ambient taken off; absent where that is not known or was as
 *     strong as the reading
 * @param over by how much it was metered above what was expected
 * @param uncertainty of that, one standard deviation
 * @param remedy what would bring the light back; absent where nothing is off
 */
public record ComparedReading(
    TakeReading reading,
    Optional<Level> expected,
    Optional<Level> metered,
    Optional<Stops> over,
    Optional<Stops> uncertainty,
    Optional<Remedy> remedy,
    Said sentence) {

  /** Less is what meters and stands do by themselves: a judgement, as the trade sets lights. */
  public static final Stops AS_EXPECTED = new Stops(0.15);

  /** Every reading of a take, in its order. */
  public static List<ComparedReading> of(Take take, SetupDocument shot) {
    return of(take.readings(), shot);
  }

  /** Readings that nobody has logged yet. */
  public static List<ComparedReading> of(List<TakeReading> readings, SetupDocument shot) {
    Figures figures = FiguresComputation.of(shot);
    return readings.stream().map(reading -> of(reading, shot, figures)).toList();
  }

  private static ComparedReading of(TakeReading reading, SetupDocument shot, Figures figures) {
    Optional<LightFigures> light = find(figures, reading.light());
    Optional<Level> expected = light.flatMap(LightFigures::level);
    Optional<Level> metered = metered(reading, shot);
    Optional<Stops> over =
        metered.flatMap(m -> expected.map(e -> m.exposure().stopsOver(e.exposure())));
    Optional<Remedy> remedy =
        over.filter(off -> off.abs().compareTo(AS_EXPECTED) >= 0)
            .flatMap(off -> light.map(of -> remedy(off, of)));
    return new ComparedReading(
        reading,
        expected,
        metered,
        over,
        metered.flatMap(
            m -> expected.map(e -> Stops.inQuadrature(List.of(m.uncertainty(), e.uncertainty())))),
        remedy,
        RemedyWords.sentence(reading.light(), light, over, remedy));
  }

  private static Optional<LightFigures> find(Figures figures, LightId id) {
    return figures.lights().stream().filter(of -> of.light().id().equals(id)).findFirst();
  }

  /** The level by the reading, by the same way as any stored reading's. */
  private static Optional<Level> metered(TakeReading reading, SetupDocument shot) {
    return withReadings(List.of(reading), shot)
            instanceof Reading.Sound<SetupDocument>(var document)
        ? find(FiguresComputation.of(document), reading.light())
            .flatMap(LightFigures::level)
            .filter(level -> level.known() == lampwright.engine.Known.METERED)
        : Optional.empty();
  }

  /** The setup with readings of the day in the place of its own. */
  static Reading<SetupDocument> withReadings(List<TakeReading> readings, SetupDocument setup) {
    return UsedDocument.of(
        setup,
        new Used(
            new Used.Exposure(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            readings.stream()
                .map(
                    reading ->
                        new Used.OfLight(
                            reading.light(),
                            Optional.empty(),
                            Optional.of(reading.meter()),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()))
                .toList(),
            Optional.empty()));
  }

  private static Remedy remedy(Stops over, LightFigures figures) {
    Light light = figures.light();
    return Remedy.of(
        over,
        figures.atTarget().modifier().face(),
        figures.distance(),
        light
            .stopsDown()
            .map(down -> new Remedy.DialNow(down, light.head().range(), light.head().step())));
  }
}
