package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether a dial keeps its steps. */
class DialCheckTest {

  @Test
  void aTrueDialIsLeftWithoutBlame() {
    DialCheck dial = read(1, 21);
    assertEquals(1, dial.slope().value(), dial.uncertainty().within95().value());
    assertTrue(dial.even(), dial.sentence());
    assertTrue(dial.sentence().startsWith("The dial of big keeps its steps: "), dial.sentence());
  }

  @Test
  void aDialThatGivesNineTenthsOfAStopAStopIsFoundOut() {
    DialCheck dial = read(0.9, 22);
    assertEquals(0.9, dial.slope().value(), dial.uncertainty().within95().value());
    assertFalse(dial.even(), dial.sentence());
    assertEquals(0.5, dial.worst().value(), 0.15);
    assertTrue(dial.sentence().contains("does not keep its steps"), dial.sentence());
  }

  /** A dial of ten readings over five stops. */
  private static DialCheck read(double slope, long seed) {
    Random random = new Random(seed);
    Bench bench = new Bench(() -> random.nextGaussian() * 0.03);
    for (int i = 0; i < 10; i++) {
      int down = i % 6;
      bench.read("big", "", 2, down, (1 - slope) * down);
    }
    List<DialCheck> dials = Calibration.of(bench.sheet(Bench.head("big"))).dials();
    assertEquals(1, dials.size(), "seed " + seed);
    return dials.getFirst();
  }

  @Test
  void twoPowersAreNoCheck() {
    Bench bench = Bench.withoutErrors().read("big", "", 2, 0).read("big", "", 2, 4);
    assertEquals(List.of(), bench.read("big", "", 3, 4.02).calibration().dials());
    assertEquals(1, bench.read("big", "", 3, 2).calibration().dials().size());
  }
}
