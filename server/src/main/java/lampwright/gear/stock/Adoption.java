package lampwright.gear.stock;

import java.util.Locale;
import java.util.Optional;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.Uncertainty;

/**
 * What of a calibration gear can take over honestly: only what a meter has a share in. A head takes
 * its output as the reading that is to be expected at {@link Calibration#REFERENCE} with its
 * standard reflector, so it counts as metered and no more as its maker's word; a modifier takes its
 * loss there.
 */
public sealed interface Adoption {

  /**
   * It can.
   *
   * @param item the gear with what was found
   * @param sentence what that is and how sure
   */
  record Adoptable(GearItem item, String sentence) implements Adoption {}

  /**
   * It cannot.
   *
   * @param reason a sentence: what is missing
   */
  record NotAdoptable(String reason) implements Adoption {}

  /**
   * Looks for it.
   *
   * @param item the gear with the readings that the calibration is of
   */
  static Adoption of(GearItem item, Calibration calibration) {
    return switch (item.piece()) {
      case Head head -> ofHead(item, head, calibration);
      case Modifier modifier -> ofModifier(item, modifier, calibration);
      default -> new NotAdoptable("Only heads and modifiers are calibrated.");
    };
  }

  private static Adoption ofHead(GearItem item, Head head, Calibration calibration) {
    Optional<Calibration.CalibratedPair> bare =
        calibration.pairs().stream()
            .filter(pair -> pair.head().equals(head.name()) && pair.modifier().isEmpty())
            .filter(Calibration.CalibratedPair::wasRead)
            .findFirst();
    if (bare.isEmpty()) {
      return new NotAdoptable(
          "Output of %s: no reading with its standard reflector. Read it so once."
              .formatted(head.name()));
    }
    Output.ByReading output =
        new Output.ByReading(
            bare.get().fNumber(), Iso.ofMark(100), Calibration.REFERENCE, Stops.ZERO);
    return new Adoptable(
        item.withPiece(head.withOutput(output)),
        "Output by calibration: %s at 2 m, ISO 100, full power%s"
            .formatted(bare.get().fNumber().tenthsText(), within(bare.get().uncertainty())));
  }

  private static Adoption ofModifier(GearItem item, Modifier modifier, Calibration calibration) {
    Optional<Calibration.CalibratedModifier> found =
        calibration.modifiers().stream()
            .filter(calibrated -> calibrated.name().equals(modifier.name()))
            .filter(_ -> isCompared(calibration, modifier.name()))
            .findFirst();
    if (found.isEmpty()) {
      return new NotAdoptable(
          "Loss of %s: no head was read both with it and with its standard reflector. Read one so."
              .formatted(modifier.name()));
    }
    return new Adoptable(
        item.withPiece(modifier.withLoss(found.get().loss(), Calibration.REFERENCE)),
        "Loss by calibration: %s at 2 m%s"
            .formatted(stops(found.get().loss()), within(found.get().uncertainty())));
  }

  private static boolean isCompared(Calibration calibration, String modifier) {
    return calibration.heads().stream()
        .anyMatch(
            head ->
                wasRead(calibration, head.name(), Optional.empty())
                    && wasRead(calibration, head.name(), Optional.of(modifier)));
  }

  private static boolean wasRead(Calibration calibration, String head, Optional<String> modifier) {
    return calibration.pairs().stream()
        .anyMatch(
            pair -> pair.head().equals(head) && pair.modifier().equals(modifier) && pair.wasRead());
  }

  private static String within(Uncertainty uncertainty) {
    return "; ± %s in 95 of 100 cases.".formatted(stops(uncertainty.within95()));
  }

  private static String stops(Stops stops) {
    return String.format(Locale.ROOT, "%.2f stops", stops.value());
  }
}
