package lampwright.gear;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;

/**
 * A camera body.
 *
 * @param sync the shortest time at which a focal-plane shutter is open to the whole frame; with a
 *     leaf shutter, the shortest time of the shutter
 */
public record Body(
    String name,
    Millimetres width,
    Millimetres height,
    Optional<Integer> pixelsWide,
    Shutter shutter,
    ShutterTime sync,
    Optional<Seconds> curtainTravel,
    Iso lowestIso,
    Iso highestIso,
    Optional<Double> weightKg,
    Optional<String> note)
    implements Piece {

  /** Where the shutter sits. */
  public enum Shutter {
    FOCAL_PLANE,
    LEAF
  }

  private static final Form<Millimetres> SIDE =
      Forms.number("mm")
          .moreThan(0)
          .atLeast(1)
          .atMost(400)
          .maybe(36)
          .as(Millimetres::new, Millimetres::value);

  private static final Field<Body, String> NAME =
      required("name", GearForms.name(), Body::name, "What the studio calls it.");
  private static final Field<Body, Millimetres> WIDTH =
      required("width_mm", SIDE, Body::width, "The picture's long side on the sensor or film.");
  private static final Field<Body, Millimetres> HEIGHT =
      required("height_mm", SIDE, Body::height, "The picture's short side on the sensor or film.");
  private static final Field<Body, Optional<Integer>> PIXELS =
      optional(
          "pixels_wide", Forms.count(1, 200_000), Body::pixelsWide, "Pixels along the long side.");
  private static final Field<Body, Shutter> SHUTTER =
      usually(
          Shutter.FOCAL_PLANE,
          "shutter",
          Forms.choice(Shutter.values()),
          Body::shutter,
          "Where the shutter sits; usually in the focal plane.");
  private static final Field<Body, ShutterTime> SYNC =
      required(
          "sync",
          GearForms.shutterTime(),
          Body::sync,
          "The shortest time that flash can be used with, such as \"1/200\".");
  private static final Field<Body, Optional<Seconds>> TRAVEL =
      optional(
          "curtain_travel_ms",
          GearForms.milliseconds(50, 3.1),
          Body::curtainTravel,
          "How long a curtain takes across the frame, in milliseconds.");
  private static final Field<Body, Iso> LOWEST =
      usually(Iso.ofMark(100), "iso_lowest", GearForms.iso(), Body::lowestIso, "Usually 100.");
  private static final Field<Body, Iso> HIGHEST =
      usually(
          Iso.ofMark(6400),
          "iso_highest",
          GearForms.iso(),
          Body::highestIso,
          "As high as the studio would go; usually 6400.");
  private static final Field<Body, Optional<Double>> WEIGHT =
      optional(
          "weight_kg",
          Forms.number("kg").moreThan(0).atMost(100).maybe(0.9),
          Body::weightKg,
          "What it weighs.");
  private static final Field<Body, Optional<String>> NOTE = GearForms.note(Body::note);

  /** The body as it stands in a document. */
  public static final ObjectForm<Body> FORM =
      ObjectForm.<Body>of(
              "body",
              "A camera body. Its lowest ISO must not be above its highest.",
              values ->
                  new Body(
                      values.get(NAME),
                      values.get(WIDTH),
                      values.get(HEIGHT),
                      values.get(PIXELS),
                      values.get(SHUTTER),
                      values.get(SYNC),
                      values.get(TRAVEL),
                      values.get(LOWEST),
                      values.get(HIGHEST),
                      values.get(WEIGHT),
                      values.get(NOTE)),
              List.of(
                  NAME, WIDTH, HEIGHT, PIXELS, SHUTTER, SYNC, TRAVEL, LOWEST, HIGHEST, WEIGHT,
                  NOTE))
          .checked(
              (body, at, problems) -> {
                if (body.lowestIso().value() > body.highestIso().value()) {
                  problems.add(
                      at.field("iso_lowest"),
                      "Lowest ISO ("
                          + body.lowestIso()
                          + ") must not be above the highest ("
                          + body.highestIso()
                          + "). Maybe they are swapped?");
                }
              });
}
