package lampwright.setup;

import static lampwright.document.Field.optional;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.gear.Body;
import lampwright.gear.GearForms;
import lampwright.gear.Lens;

/**
 * The camera of a setup.
 *
 * @param bearing the true bearing of its axis, clockwise from north
 */
public record Camera(
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<Point> place,
    Optional<Point> aim,
    Optional<Degrees> bearing,
    Optional<Metres> focusDistance) {

  private static final Field<Camera, Optional<Body>> BODY =
      optional("body", Body.FORM, Camera::body, "The body, as it was.");
  private static final Field<Camera, Optional<Lens>> LENS =
      optional("lens", Lens.FORM, Camera::lens, "The lens, as it was.");
  private static final Field<Camera, Optional<Point>> PLACE =
      optional("place", SetupForms.point(), Camera::place, "Where its lens is.");
  private static final Field<Camera, Optional<Point>> AIM =
      optional("aim", SetupForms.point(), Camera::aim, "The point in the middle of the picture.");
  private static final Field<Camera, Optional<Degrees>> BEARING =
      optional(
          "bearing_deg",
          Forms.number("°").atLeast(0).atMost(360).maybe(240).as(Degrees::new, Degrees::value),
          Camera::bearing,
          "True bearing of its axis, clockwise from north.");
  private static final Field<Camera, Optional<Metres>> FOCUS =
      optional(
          "focus_distance_m",
          GearForms.length(500, 4),
          Camera::focusDistance,
          "What it is focused on, from the lens.");

  static final ObjectForm<Camera> FORM =
      ObjectForm.of(
          "camera",
          "The camera of a setup.",
          values ->
              new Camera(
                  values.get(BODY),
                  values.get(LENS),
                  values.get(PLACE),
                  values.get(AIM),
                  values.get(BEARING),
                  values.get(FOCUS)),
          List.of(BODY, LENS, PLACE, AIM, BEARING, FOCUS));
}
