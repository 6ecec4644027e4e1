package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.Known;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.gear.Stand;

/**
 * One source in a setup.
 *
 * @param reason why it is there
 * @param heads how many heads of this kind fire together from this place
 * @param output a reading of one such head with its modifier on, which wins over the head's own
 *     output and the modifier's loss
 * @param pops how often it fires for one picture
 * @param place of its emitting face
 * @param placeKnown set with a tape, or estimated by eye
 * @param aim the point that it is aimed at; absent means its target
 * @param stand what carries it
 * @param stopsDown how far below full power it stands; absent means unknown
 */
public record Light(
    LightId id,
    Role role,
    Optional<String> reason,
    Head head,
    int heads,
    int pops,
    Optional<Modifier> modifier,
    Optional<Output.ByReading> output,
    List<Gel> gels,
    Point place,
    Known placeKnown,
    Optional<Point> aim,
    Target target,
    Optional<Stand> stand,
    Optional<Stops> stopsDown,
    Optional<MeterReading> reading) {

  private static final Field<Light, LightId> ID =
      required("id", LightId.FORM, Light::id, "What it is called in this document: key, rim-left.");
  private static final Field<Light, Role> ROLE =
      required("role", Forms.choice(Role.values()), Light::role, "What it is for.");
  private static final Field<Light, Optional<String>> REASON =
      optional("reason", SetupForms.paragraph(), Light::reason, "Why it is there.");
  private static final Field<Light, Head> HEAD =
      required("head", Head.FORM, Light::head, "The head, as it was when the setup was made.");
  private static final Field<Light, Integer> HEADS =
      usually(
          1,
          "heads",
          Forms.count(1, 12),
          Light::heads,
          "How many of these heads fire together from this place; usually 1.");
  private static final Field<Light, Integer> POPS =
      usually(
          1,
          "pops",
          Forms.count(1, 64),
          Light::pops,
          "How often it fires for one picture, while the shutter stays open; usually once. A"
              + " reading is of one flash.");
  private static final Field<Light, Optional<Modifier>> MODIFIER =
      optional(
          "modifier",
          Modifier.FORM,
          Light::modifier,
          "What shapes its light; left out for the head's standard reflector.");
  private static final Field<Light, Optional<Output.ByReading>> OUTPUT =
      optional(
          "output",
          Output.ByReading.WITH_MODIFIER,
          Light::output,
          "A reading of one such head with this modifier on and no gel, taken anywhere; it wins"
              + " over the head's output and the modifier's loss.");
  private static final Field<Light, List<Gel>> GELS =
      Field.list("gels", Gel.FORM, 6, Light::gels, "Its gels, from the head outward.");
  private static final Field<Light, Point> PLACE =
      required("place", SetupForms.point(), Light::place, "Where its emitting face is.");
  private static final Field<Light, Known> PLACE_KNOWN =
      usually(
          Known.SET,
          "place_known",
          Forms.choice(new Known[] {Known.SET, Known.ESTIMATED}),
          Light::placeKnown,
          "How its place is known: set with a tape, which is usual, or estimated by eye.");
  private static final Field<Light, Optional<Point>> AIM =
      optional("aim", SetupForms.point(), Light::aim, "Where it is aimed, if not at its target.");
  private static final Field<Light, Target> TARGET =
      required("target", Target.FORM, Light::target, "What it is for.");
  private static final Field<Light, Optional<Stand>> STAND =
      optional("stand", Stand.FORM, Light::stand, "What carries it, with its ballast.");
  private static final Field<Light, Optional<Stops>> STOPS_DOWN =
      optional(
          "stops_down",
          GearForms.stops(0, 14),
          Light::stopsDown,
          "How far below full power it stands: 1/4 is 2.");
  private static final Field<Light, Optional<MeterReading>> READING =
      optional("reading", MeterReading.FORM, Light::reading, "What the meter gave for it alone.");

  public static final ObjectForm<Light> FORM =
      ObjectForm.<Light>of(
              "light",
              "One source in a setup. It needs stops_down or a reading, must not stand on its"
                  + " target or aim, its power must be within its head's range, and a target"
                  + " that is held on_surface needs surface_facing_deg.",
              values ->
                  new Light(
                      values.get(ID),
                      values.get(ROLE),
                      values.get(REASON),
                      values.get(HEAD),
                      values.get(HEADS),
                      values.get(POPS),
                      values.get(MODIFIER),
                      values.get(OUTPUT),
                      values.get(GELS),
                      values.get(PLACE),
                      values.get(PLACE_KNOWN),
                      values.get(AIM),
                      values.get(TARGET),
                      values.get(STAND),
                      values.get(STOPS_DOWN),
                      values.get(READING)),
              List.of(
                  ID,
                  ROLE,
                  REASON,
                  HEAD,
                  HEADS,
                  POPS,
                  MODIFIER,
                  OUTPUT,
                  GELS,
                  PLACE,
                  PLACE_KNOWN,
                  AIM,
                  TARGET,
                  STAND,
                  STOPS_DOWN,
                  READING))
          .checked(LightChecks::check);

  /** Where a light can stand. */
  public static Form<Point> placeForm() {
    return SetupForms.point();
  }

  /** The same light somewhere else; its reading is not looked at. */
  public Light withPlace(Point other) {
    return new Light(
        id,
        role,
        reason,
        head,
        heads,
        pops,
        modifier,
        output,
        gels,
        other,
        placeKnown,
        aim,
        target,
        stand,
        stopsDown,
        reading);
  }

  /** The modifier, or the head's standard reflector where none is named. */
  public Modifier modifierOrStandard() {
    return modifier.orElseGet(Modifier::standardReflector);
  }
}
