package lampwright.gear.calibration;

import static lampwright.document.Field.list;
import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.unit.Stops;

/**
 * What a photographer read of their own heads and modifiers. {@link Calibration#of} makes of it
 * what the gear gives.
 */
public record CalibrationSheet(
    List<HeadOnSheet> heads, List<ModifierOnSheet> modifiers, List<CalibrationReading> readings) {

  private static final int MOST_HEADS = 20;
  private static final int MOST_MODIFIERS = 30;

  /** An afternoon's work; few enough that the fit takes moments. */
  private static final int MOST_READINGS = 150;

  /** Powers that lie closer are one power. */
  private static final Stops ONE_POWER = new Stops(0.05);

  private static final Field<CalibrationSheet, List<HeadOnSheet>> HEADS =
      required(
          "heads",
          Forms.list(HeadOnSheet.FORM, 1, MOST_HEADS),
          CalibrationSheet::heads,
          "The heads, each unit by itself: two of a kind differ.");
  private static final Field<CalibrationSheet, List<ModifierOnSheet>> MODIFIERS =
      list(
          "modifiers",
          ModifierOnSheet.FORM,
          MOST_MODIFIERS,
          CalibrationSheet::modifiers,
          "The modifiers; each head has its standard reflector besides.");
  private static final Field<CalibrationSheet, List<CalibrationReading>> READINGS =
      required(
          "readings",
          Forms.list(CalibrationReading.FORM, 1, MOST_READINGS),
          CalibrationSheet::readings,
          "The readings, in any order.");

  /** The sheet as a document. */
  public static final ObjectForm<CalibrationSheet> FORM =
      ObjectForm.<CalibrationSheet>of(
              "calibration_sheet",
              "What a meter read of one's own heads and modifiers. Readings name heads and"
                  + " modifiers of the sheet; each name stands once.",
              values ->
                  new CalibrationSheet(
                      values.get(HEADS), values.get(MODIFIERS), values.get(READINGS)),
              List.of(HEADS, MODIFIERS, READINGS))
          .checked(CalibrationSheet::check);

  /** Copies the lists. */
  public CalibrationSheet {
    heads = List.copyOf(heads);
    modifiers = List.copyOf(modifiers);
    readings = List.copyOf(readings);
  }

  boolean hasReading(String head, Optional<String> modifier) {
    return readings.stream().anyMatch(r -> r.head().equals(head) && r.modifier().equals(modifier));
  }

  /** The powers that a head was read at, in stops down, the highest power first. */
  List<Stops> powers(String head) {
    List<Stops> powers = new ArrayList<>();
    readings.stream()
        .filter(r -> r.head().equals(head))
        .map(CalibrationReading::stopsDown)
        .sorted()
        .filter(p -> powers.isEmpty() || !p.isWithin(ONE_POWER, powers.getLast()))
        .forEach(powers::add);
    return powers;
  }

  private static void check(CalibrationSheet sheet, Pointer at, Problems problems) {
    List<String> heads = sheet.heads.stream().map(HeadOnSheet::name).toList();
    List<String> modifiers = sheet.modifiers.stream().map(ModifierOnSheet::name).toList();
    onceEach(heads, "Head", at.field("heads"), problems);
    onceEach(modifiers, "Modifier", at.field("modifiers"), problems);
    for (int i = 0; i < sheet.readings.size(); i++) {
      CalibrationReading reading = sheet.readings.get(i);
      Pointer here = at.field("readings").item(i);
      if (!heads.contains(reading.head())) {
        problems.add(
            here.field("head"),
            "Head (\"" + reading.head() + "\") must be the name of one of this sheet's heads.");
      }
      reading
          .modifier()
          .filter(name -> !modifiers.contains(name))
          .ifPresent(
              name ->
                  problems.add(
                      here.field("modifier"),
                      "Modifier (\""
                          + name
                          + "\") must be the name of one of this sheet's modifiers. Maybe leave it"
                          + " out for the standard reflector?"));
    }
  }

  private static void onceEach(List<String> names, String kind, Pointer at, Problems problems) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < names.size(); i++) {
      if (!seen.add(names.get(i))) {
        problems.add(
            at.item(i).field("name"),
            kind + " (\"" + names.get(i) + "\") must stand here once. Maybe number them?");
      }
    }
  }
}
