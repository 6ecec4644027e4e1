package lampwright.setup.figures;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stop on a dial does, against the table of section 6 of the reference. */
class DialsTest {

  private static final Object ONE =
      Documents.with(Documents.resource("one-light.json"), "/ambient", Map.of("ev100", 10.0));

  private static DialStep step(Object json, DialStep.Dial dial, double turned) {
    return FiguresComputation.of(Documents.setup(json)).dials().stream()
        .filter(step -> step.dial() == dial && step.turned().value() == turned)
        .findFirst()
        .orElseThrow();
  }

  private static double value(Optional<Stops> stops) {
    return stops.orElseThrow().value();
  }

  @ParameterizedTest
  @CsvSource({
    "APERTURE, -1, -1, -1, 0",
    "ISO, -1, -1, -1, 0",
    "NEUTRAL_DENSITY, -1, -1, -1, 0",
    "TIME, -1, 0, -1, 1",
    "POWER, -1, -1, 0, -1",
    "APERTURE, 1, 1, 1, 0",
    "TIME, 1, 0, 1, -1",
    "POWER, 1, 1, 0, 1"
  })
  void aStopOnADialDoesWhatReference6Says(
      DialStep.Dial dial, double turned, double flash, double ambient, double balance) {
    DialStep step = step(ONE, dial, turned);
    assertEquals(flash, value(step.flash()), 1e-12);
    assertEquals(ambient, value(step.ambient()), 1e-12);
    assertEquals(balance, value(step.balance()), 1e-12);
  }

  /** The whole setup computed anew with the other dial says the same. */
  @Test
  void aStepIsTheDifferenceOfTwoSetups() {
    Object longBurst =
        Documents.with(
            Documents.with(
                Documents.with(ONE, "/exposure/time", "1/500"),
                "/lights/0/head/long_burst_efficiency",
                0.7),
            "/camera/body",
            Map.of(
                "name",
                "b",
                "width_mm",
                36.0,
                "height_mm",
                24.0,
                "sync",
                "1/250",
                "curtain_travel_ms",
                4.0));
    DialStep step = step(longBurst, DialStep.Dial.TIME, -1);
    TargetFigures before = target(longBurst);
    TargetFigures after = target(Documents.with(longBurst, "/exposure/time", "1/1000"));
    assertEquals(
        after.sum().flash().stopsOver(before.sum().flash()).value(), value(step.flash()), 1e-12);
    assertEquals(
        after.sum().total().stopsOver(before.sum().total()).value(), value(step.total()), 1e-12);
    // -0.75 from 1/500 to 1/1000 with a curtain of 1/250 s: 2.35 less 1.61 (reference, section 3).
    assertEquals(-0.74, value(step.flash()), 0.01);
  }

  private static TargetFigures target(Object json) {
    return FiguresComputation.of(Documents.setup(json)).targets().getFirst();
  }

  @Test
  void whatTheGearCannotDoIsSaid() {
    Object full = Documents.with(ONE, "/lights/0/stops_down", 0.0);
    assertTrue(step(full, DialStep.Dial.POWER, 1).limit().isPresent());
    assertEquals(Optional.empty(), step(full, DialStep.Dial.POWER, -1).limit());
    assertTrue(step(ONE, DialStep.Dial.NEUTRAL_DENSITY, 1).limit().isPresent());
    Object atSync =
        Documents.with(
            Documents.with(ONE, "/exposure/time", "1/200"),
            "/camera/body",
            Map.of("name", "b", "width_mm", 36.0, "height_mm", 24.0, "sync", "1/200"));
    assertTrue(
        english(step(atSync, DialStep.Dial.TIME, -1).limit().orElseThrow())
            .getFirst()
            .contains("% of the"));
    assertEquals(Optional.empty(), step(atSync, DialStep.Dial.TIME, 1).limit());
  }
}
