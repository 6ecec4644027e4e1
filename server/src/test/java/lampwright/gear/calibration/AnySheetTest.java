package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

/** Sheets of nonsense at the ends of every field's range. */
class AnySheetTest {

  @Test
  void anythingThatTheFormLetsThroughIsAnsweredInFiniteNumbers() {
    for (long seed = 1; seed <= 150; seed++) {
      CalibrationSheet sheet = anything(new Random(seed));
      Calibration found = Calibration.of(sheet);
      String told = "seed " + seed;
      assertEquals(sheet.readings().size(), found.readings().size(), told);
      for (Calibration.FittedReading reading : found.readings()) {
        assertTrue(reading.weight() > 0 && reading.weight() <= 1, told);
        assertTrue(Double.isFinite(reading.expected().value()), told);
      }
      for (Calibration.CalibratedPair pair : found.pairs()) {
        assertTrue(pair.uncertainty().standardError().value() > 0, told);
      }
      assertTrue(found.outliers().stream().noneMatch(o -> o.sentence().isEmpty()), told);
    }
  }

  private static CalibrationSheet anything(Random random) {
    List<HeadOnSheet> heads = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(20); i++) {
      String name = "head " + i;
      heads.add(random.nextInt(4) == 0 ? Bench.head(name, 0.1) : Bench.head(name));
    }
    List<ModifierOnSheet> modifiers = new ArrayList<>();
    for (int i = 0; i < random.nextInt(30); i++) {
      modifiers.add(
          new ModifierOnSheet("modifier " + i, i % 2 == 0 ? Bench.BOX.face() : Bench.DISH.face()));
    }
    List<CalibrationReading> readings = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(150); i++) {
      boolean bare = modifiers.isEmpty() || random.nextInt(5) == 0;
      readings.add(
          new CalibrationReading(
              heads.get(random.nextInt(heads.size())).name(),
              bare
                  ? Optional.empty()
                  : Optional.of(modifiers.get(random.nextInt(modifiers.size())).name()),
              FNumber.of(random.nextBoolean() ? 0.5 : 128),
              random.nextInt(10),
              new Iso(random.nextBoolean() ? 3 : 819_200),
              new Metres(random.nextBoolean() ? 0.001 : 50),
              new Stops(14 * random.nextDouble()),
              new MeterConstant(random.nextBoolean() ? 100 : 1_000)));
    }
    return new CalibrationSheet(heads, modifiers, readings);
  }
}
