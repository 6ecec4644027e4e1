package lampwright.setup.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.setup.DemoSeeds;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.figures.FiguresComputation;
import org.junit.jupiter.api.Test;

/** What a stand-in is expected to meter on the marks. */
class WalkedMarkTest {

  private static List<WalkedMark> walk(SetupDocument setup) {
    return WalkedMark.of(setup, FiguresComputation.of(setup));
  }

  private static MeterReading reading(double mark, int tenths) {
    return new MeterReading(
        new FNumber(mark),
        tenths,
        Optional.empty(),
        Known.METERED,
        false,
        MeterReading.Receptor.FLAT);
  }

  private static SetupDocument twoMarks() {
    return LitForTests.setup(
        Map.of(
            "subjects",
            List.of(
                Map.of(
                    "name",
                    "walker",
                    "place",
                    LitForTests.point(0, 0, 0),
                    "path",
                    List.of(
                        Map.of("name", "far", "at", LitForTests.point(0, 3, 0)),
                        Map.of("name", "hit mark", "at", LitForTests.point(0, 0, 0)))))),
        LitForTests.light("front", 0, -3, "toward_light", 8));
  }

  /** The inverse square law: at twice the distance two stops less, f/4 where it was f/8. */
  @Test
  void aMarkTwiceAsFarFromTheOnlyLightReadsTwoStopsLess() {
    List<WalkedMark> marks = walk(twoMarks());
    assertEquals("far", marks.getFirst().mark().name());
    assertEquals(4, marks.getFirst().expected().orElseThrow().value(), 1e-9);
    assertEquals(8, marks.getLast().expected().orElseThrow().value(), 1e-9);
  }

  /** From f/8 to f/16 it is two stops, as to f/4 the other way; tenths go on from there. */
  @Test
  void aReadingIsOverByTheStopsThatTheMeterShowsMore() {
    WalkedMark hit = walk(twoMarks()).getLast();
    assertEquals(0, hit.over(reading(8, 0)).orElseThrow().value(), 1e-9);
    assertEquals(2, hit.over(reading(16, 0)).orElseThrow().value(), 1e-9);
    assertEquals(-1.7, hit.over(reading(4, 3)).orElseThrow().value(), 1e-9);
  }

  @Test
  void everyMarkOfTheDemosWalkersIsThereWithItsOwnStation() {
    int found = 0;
    for (SetupDocument setup : new DemoSeeds().setups().values()) {
      List<WalkedMark> marks = walk(setup);
      long written =
          setup.subjects().stream()
              .map(Subject::path)
              .filter(path -> path.size() > 1)
              .mapToLong(List::size)
              .sum();
      assertEquals(written, marks.size(), setup.title());
      for (WalkedMark mark : marks) {
        assertEquals(Optional.of(mark.mark().name()), mark.station().mark());
      }
      found += marks.size();
    }
    assertTrue(found > 50, found + " marks");
  }
}
