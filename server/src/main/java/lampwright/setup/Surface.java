package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.gear.GearForms;

/**
 * Something upright that is worth lighting: a wall, foliage, a boat.
 *
 * @param from one end of its foot
 * @param to the other end of its foot
 * @param reflectance the share of light that it gives back, 0 to 1
 */
public record Surface(
    String name, Point from, Point to, Optional<Metres> height, Optional<Double> reflectance) {

  private static final Field<Surface, String> NAME =
      required("name", SetupForms.line(), Surface::name, "What it is.");
  private static final Field<Surface, Point> FROM =
      required("from", SetupForms.point(), Surface::from, "One end of its foot.");
  private static final Field<Surface, Point> TO =
      required("to", SetupForms.point(), Surface::to, "The other end of its foot.");
  private static final Field<Surface, Optional<Metres>> HEIGHT =
      optional("height_m", GearForms.length(200, 3), Surface::height, "How high it is.");
  private static final Field<Surface, Optional<Double>> REFLECTANCE =
      optional(
          "reflectance",
          Forms.number("").atLeast(0).atMost(1).maybe(0.18),
          Surface::reflectance,
          "The share of light that it gives back, roughly: 0.18 is a middle grey.");

  static final ObjectForm<Surface> FORM =
      ObjectForm.of(
          "surface",
          "Something upright that is worth lighting.",
          values ->
              new Surface(
                  values.get(NAME),
                  values.get(FROM),
                  values.get(TO),
                  values.get(HEIGHT),
                  values.get(REFLECTANCE)),
          List.of(NAME, FROM, TO, HEIGHT, REFLECTANCE));
}
