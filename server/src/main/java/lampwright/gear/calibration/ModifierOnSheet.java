package lampwright.gear.calibration;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.light.EmittingFace;
import lampwright.gear.GearForms;

/** A modifier that was on a head that was read. */
public record ModifierOnSheet(String name, EmittingFace face) {

  private static final Field<ModifierOnSheet, String> NAME =
      required("name", GearForms.name(), ModifierOnSheet::name, "What the studio calls it.");
  private static final Field<ModifierOnSheet, EmittingFace> FACE =
      usually(
          new EmittingFace.PointSource(),
          "face",
          GearForms.face(),
          ModifierOnSheet::face,
          "The face that the light leaves by; usually so small that it counts as a point.");

  static final ObjectForm<ModifierOnSheet> FORM =
      ObjectForm.of(
          "modifier_on_sheet",
          "A modifier that was on a head that was read.",
          values -> new ModifierOnSheet(values.get(NAME), values.get(FACE)),
          List.of(NAME, FACE));
}
