package lampwright.setup.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.PathFigures;

/**
 * A mark that a stand-in walks to, and what is to be expected there.
 *
 * @param station all the light there and the focus, on a flat meter toward the camera
 * @param path that it is on, by whose ISO the meter reads
 */
public record WalkedMark(
    String subject, Subject.Mark mark, PathFigures.Station station, PathFigures path) {

  /** The marks of all who walk, in the order of the walk. */
  public static List<WalkedMark> of(SetupDocument setup, Figures figures) {
    List<WalkedMark> marks = new ArrayList<>();
    int next = 0;
    for (Subject subject : setup.subjects()) {
      if (subject.path().size() < 2) {
        continue;
      }
      PathFigures path = figures.paths().get(next++);
      List<PathFigures.Station> stations =
          path.stations().stream().filter(station -> station.mark().isPresent()).toList();
      for (int i = 0; i < stations.size(); i++) {
        marks.add(new WalkedMark(subject.name(), subject.path().get(i), stations.get(i), path));
      }
    }
    return List.copyOf(marks);
  }

  /** What a flat meter toward the camera gives; absent where it is dark. */
  public Optional<FNumber> expected() {
    return Optional.of(station.sum())
        .filter(sum -> sum.total().value() > 0)
        .map(sum -> sum.reading(path.settings(), MeterConstant.FLAT));
  }

  /** By how much a reading there is above what is expected; absent where it is dark. */
  public Optional<Stops> over(MeterReading reading) {
    LuxSeconds metered =
        reading
            .fNumber()
            .toExposure(reading.iso().orElse(path.settings().iso()), reading.receptor().constant());
    return expected().map(_ -> metered.stopsOver(station.sum().total()));
  }
}
