package lampwright.gear.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.HeadOutput;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import org.junit.jupiter.api.Test;

/** What readings say of gear whose truth is known. */
class CalibrationTest {

  private static final double EXACT = 1e-9;

  @Test
  void readingsWithoutErrorsGiveTheTruth() {
    Calibration found = Bench.withoutErrors().readAll().calibration();
    assertEquals(2, found.heads().size());
    assertEquals(2, found.modifiers().size());
    for (Calibration.CalibratedHead head : found.heads()) {
      assertEquals(0, Bench.outputErrorStops(head), EXACT, head.name());
    }
    for (Calibration.CalibratedModifier modifier : found.modifiers()) {
      assertEquals(0, Bench.lossErrorStops(modifier), EXACT, modifier.name());
    }
    assertEquals(List.of(), found.outliers());
    assertEquals(List.of(), found.undetermined());
    assertFalse(found.plainFit().differs());
  }

  @Test
  void whatWasFoundPredictsTheReadingsByTheEnginesModel() {
    Bench bench = Bench.withoutErrors().readAll();
    Calibration found = bench.calibration();
    for (CalibrationReading reading : bench.readings()) {
      ModifierEffect effect =
          found.modifiers().stream()
              .filter(m -> reading.modifier().equals(Optional.of(m.name())))
              .map(
                  m ->
                      ModifierEffect.of(
                          m.name().equals("box") ? Bench.BOX.face() : Bench.DISH.face(),
                          m.loss(),
                          Calibration.REFERENCE))
              .findFirst()
              .orElseGet(ModifierEffect::standardReflector);
      HeadOutput output =
          HeadOutput.of(
              found.heads().stream()
                  .filter(h -> h.name().equals(reading.head()))
                  .findFirst()
                  .orElseThrow()
                  .guideNumber());
      FNumber predicted =
          FNumber.ofExposure(
              output.exposureAt(reading.distance(), effect).minus(reading.stopsDown()),
              reading.iso(),
              reading.constant());
      assertEquals(0, predicted.stopsAbove(reading.fNumber()).value(), EXACT);
    }
  }

  /** GN 64 m at 2 m is f/32 (definition of the guide number); the box takes 1.6 stops there. */
  @Test
  void pairsArePredictedAtTwoMetresWhetherTheyWereReadOrNot() {
    Bench bench = Bench.withoutErrors().read("big", "", 3, 0).read("small", "", 3, 0);
    Calibration found = bench.read("small", "box", 1.5, 0).calibration();
    Calibration.CalibratedPair bare = pair(found, "big", Optional.empty());
    assertEquals(32, bare.fNumber().value(), 1e-7);
    assertTrue(bare.wasRead());
    Calibration.CalibratedPair unread = pair(found, "big", Optional.of("box"));
    assertEquals(32 * Math.pow(2, -0.8), unread.fNumber().value(), 1e-7);
    assertFalse(unread.wasRead());
    assertTrue(
        unread.uncertainty().standardError().value() > bare.uncertainty().standardError().value());
  }

  private static Calibration.CalibratedPair pair(
      Calibration found, String head, Optional<String> modifier) {
    return found.pairs().stream()
        .filter(p -> p.head().equals(head) && p.modifier().equals(modifier))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aHeadThatWasOnlyReadWithOneModifierIsKnownTogetherWithItOnly() {
    Bench bench = Bench.withoutErrors().read("big", "", 2, 0).read("small", "box", 2, 0);
    Calibration found = bench.calibration();
    assertEquals(List.of("big"), names(found));
    assertEquals(List.of(), found.modifiers());
    double together = Bench.SMALL_GUIDE_NUMBER_M / 2 * Math.pow(2, -Bench.BOX_LOSS_STOPS / 2);
    assertEquals(together, pair(found, "small", Optional.of("box")).fNumber().value(), 1e-7);
    assertEquals(
        List.of(
            "Output of small: only known together with its modifiers. Read it once with its"
                + " standard reflector, or give its maker's guide number.",
            "Loss of box: only known together with the heads that it was on. Read one of them once"
                + " with its standard reflector.",
            "Loss of dish: there is no reading with it."),
        found.undetermined());
    assertTrue(
        found.pairs().stream().noneMatch(p -> p.head().equals("small") && p.modifier().isEmpty()));
  }

  @Test
  void theMakersWordTellsAHeadFromItsModifier() {
    Bench bench = Bench.withoutErrors().read("small", "box", 2, 0);
    Calibration found =
        Calibration.of(bench.sheet(Bench.head("small", Bench.SMALL_GUIDE_NUMBER_M)));
    assertEquals(List.of("small"), names(found));
    assertEquals(Bench.BOX_LOSS_STOPS, found.modifiers().getFirst().loss().value(), EXACT);
    // Reading and word are independent: 0.1 and 0.5 in quadrature.
    assertEquals(
        Math.sqrt(0.26), found.modifiers().getFirst().uncertainty().standardError().value(), EXACT);
  }

  private static List<String> names(Calibration found) {
    return found.heads().stream().map(Calibration.CalibratedHead::name).toList();
  }

  /** One reading of 0.1 beside a word of 0.5: variances add as reciprocals (any textbook). */
  @Test
  void oneReadingBesideTheMakersWordIsSurerThanEither() {
    double makers = Bench.BIG_GUIDE_NUMBER_M * Math.sqrt(2);
    Calibration found =
        Calibration.of(
            Bench.withoutErrors().read("big", "", 2, 0).sheet(Bench.head("big", makers)));
    Calibration.CalibratedHead head = found.heads().getFirst();
    assertEquals(1 / 26.0, Bench.outputErrorStops(head), EXACT);
    assertEquals(
        Math.sqrt(1 / (1 / 0.01 + 1 / 0.25)), head.uncertainty().standardError().value(), EXACT);
    assertEquals(-25 / 26.0, head.aboveMakers().orElseThrow().value(), EXACT);
  }

  @Test
  void moreReadingsMakeItSurer() {
    double last = Double.POSITIVE_INFINITY;
    Bench bench = Bench.withoutErrors();
    for (int i = 0; i < 12; i++) {
      bench.read("big", "", 1 + i * 0.3, 0);
      double now =
          Calibration.of(bench.sheet(Bench.head("big", 70)))
              .heads()
              .getFirst()
              .uncertainty()
              .within95()
              .value();
      assertTrue(now < last, i + " readings: " + now + " after " + last);
      last = now;
    }
  }

  @Test
  void theOrderOfTheReadingsIsNothing() {
    Random random = new Random(11);
    Bench bench = new Bench(() -> random.nextGaussian() * 0.2).readAll();
    bench.read("big", "box", 2, 0, 1.4);
    Calibration found = bench.calibration();
    List<CalibrationReading> shuffled = new ArrayList<>(bench.readings());
    Collections.shuffle(shuffled, random);
    Calibration again =
        Calibration.of(
            new CalibrationSheet(
                List.of(Bench.head("small"), Bench.head("big")),
                List.of(Bench.DISH, Bench.BOX),
                shuffled));
    assertSame(found, again, 0);
  }

  /** ISO 400 for 100 is two stops, C 500 for 250 one, and a stop down one (their definitions). */
  @Test
  void speedConstantAndPowerThatAreWrittenDownChangeNothing() {
    Random random = new Random(12);
    Bench bench = new Bench(() -> random.nextGaussian() * 0.1).readAll();
    List<CalibrationReading> other =
        bench.readings().stream()
            .map(
                r ->
                    new CalibrationReading(
                        r.head(),
                        r.modifier(),
                        r.fNumber().closedBy(new Stops(2 - 1 - 1)),
                        r.tenths(),
                        new Iso(400),
                        r.distance(),
                        r.stopsDown().plus(new Stops(1)),
                        new MeterConstant(500)))
            .toList();
    assertSame(bench.calibration(), withReadings(other), 0);
  }

  @Test
  void twiceTheLightEverywhereIsAStopMoreOfEachHeadAndNoLoss() {
    Random random = new Random(13);
    Bench bench = new Bench(() -> random.nextGaussian() * 0.1).readAll();
    List<CalibrationReading> brighter =
        bench.readings().stream()
            .map(
                r ->
                    new CalibrationReading(
                        r.head(),
                        r.modifier(),
                        r.fNumber().closedBy(new Stops(0.7)),
                        3,
                        r.iso(),
                        new Metres(r.distance().value()),
                        r.stopsDown(),
                        r.constant()))
            .toList();
    assertSame(bench.calibration(), withReadings(brighter), 1);
  }

  private static Calibration withReadings(List<CalibrationReading> readings) {
    return Calibration.of(
        new CalibrationSheet(
            List.of(Bench.head("big"), Bench.head("small")),
            List.of(Bench.BOX, Bench.DISH),
            readings));
  }

  private static void assertSame(Calibration found, Calibration again, double moreOutputStops) {
    for (Calibration.CalibratedHead head : found.heads()) {
      Calibration.CalibratedHead other =
          again.heads().stream()
              .filter(h -> h.name().equals(head.name()))
              .findFirst()
              .orElseThrow();
      assertEquals(
          Bench.outputErrorStops(head) + moreOutputStops, Bench.outputErrorStops(other), 1e-7);
      assertEquals(
          head.uncertainty().standardError().value(),
          other.uncertainty().standardError().value(),
          1e-7);
    }
    for (Calibration.CalibratedModifier modifier : found.modifiers()) {
      Calibration.CalibratedModifier other =
          again.modifiers().stream()
              .filter(m -> m.name().equals(modifier.name()))
              .findFirst()
              .orElseThrow();
      assertEquals(modifier.loss().value(), other.loss().value(), 1e-7);
    }
  }
}
