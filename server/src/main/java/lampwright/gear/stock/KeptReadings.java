package lampwright.gear.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.GuideNumber;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.gear.calibration.CalibrationReading;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.gear.calibration.HeadOnSheet;
import lampwright.gear.calibration.ModifierOnSheet;

/**
 * The readings that are kept with gear, as a calibration sheet.
 *
 * @param sheet not yet held to its form's bounds
 * @param assumed a sentence for each thing that the sheet takes for granted
 */
public record KeptReadings(CalibrationSheet sheet, List<String> assumed) {

  /** Copies the list. */
  public KeptReadings {
    assumed = List.copyOf(assumed);
  }

  /**
   * Puts the sheet together. A head's guide number counts as its maker's word; an output that was
   * metered is not on the sheet, since the readings it came from may be these.
   *
   * @param item a head or a modifier with readings
   * @param stock where the other pieces that its readings name are looked for
   */
  public static KeptReadings of(GearItem item, List<GearItem> stock) {
    Set<String> heads = new LinkedHashSet<>();
    Set<String> modifiers = new LinkedHashSet<>();
    for (CalibrationReading reading : item.readings()) {
      heads.add(reading.head());
      reading.modifier().ifPresent(modifiers::add);
    }
    List<String> assumed = new ArrayList<>();
    List<HeadOnSheet> onSheet =
        heads.stream()
            .map(
                name ->
                    new HeadOnSheet(
                        name,
                        named(item, stock, name, Head.class).flatMap(KeptReadings::makersWord),
                        HeadOnSheet.USUAL_UNCERTAINTY))
            .toList();
    List<ModifierOnSheet> shaped =
        modifiers.stream()
            .map(name -> new ModifierOnSheet(name, face(item, stock, name, assumed)))
            .toList();
    return new KeptReadings(new CalibrationSheet(onSheet, shaped, item.readings()), assumed);
  }

  private static Optional<GuideNumber> makersWord(Head head) {
    return head.output() instanceof Output.ByGuideNumber(GuideNumber guideNumber)
        ? Optional.of(guideNumber)
        : Optional.empty();
  }

  private static EmittingFace face(
      GearItem item, List<GearItem> stock, String name, List<String> assumed) {
    Optional<Modifier> modifier = named(item, stock, name, Modifier.class);
    if (modifier.isEmpty()) {
      assumed.add(
          "Face of %s: not exactly one of the studio's modifiers is called so; it counts as a point."
              .formatted(name));
    }
    return modifier.map(Modifier::face).orElseGet(EmittingFace.PointSource::new);
  }

  /** The piece itself, else the only one of that name; of several nobody knows which was meant. */
  private static <P> Optional<P> named(
      GearItem item, List<GearItem> stock, String name, Class<P> type) {
    if (type.isInstance(item.piece()) && item.name().equals(name)) {
      return Optional.of(type.cast(item.piece()));
    }
    List<P> found =
        stock.stream()
            .filter(other -> other.name().equals(name) && type.isInstance(other.piece()))
            .map(other -> type.cast(other.piece()))
            .toList();
    return found.size() == 1 ? Optional.of(found.getFirst()) : Optional.empty();
  }
}
