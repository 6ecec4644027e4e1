package lampwright.setup;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;
import lampwright.gear.Head;

/**
 * What was really used of a setup on the day. What it does not tell was as planned.
 *
 * @param note in the words of who was there; may be empty
 */
public record Used(Exposure exposure, List<OfLight> lights, Optional<String> note) {

  /** As long as the note may be: it becomes the message of the revision. */
  private static final int LONGEST_NOTE = 1_000;

  /** What the camera was really set to; what is absent was as planned. */
  public record Exposure(
      Optional<FNumber> fNumber,
      Optional<ShutterTime> time,
      Optional<Iso> iso,
      Optional<Stops> neutralDensity,
      Optional<Kelvin> whiteBalance) {

    private static final Exposure AS_PLANNED =
        new Exposure(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private static final Field<Exposure, Optional<FNumber>> F_NUMBER =
        optional("f_number", GearForms.fNumber(), Exposure::fNumber, "The aperture, as printed.");
    private static final Field<Exposure, Optional<ShutterTime>> TIME =
        optional("time", GearForms.shutterTime(), Exposure::time, "The shutter time: \"1/125\".");
    private static final Field<Exposure, Optional<Iso>> ISO =
        optional("iso", GearForms.iso(), Exposure::iso, "The ISO speed, as printed.");
    private static final Field<Exposure, Optional<Stops>> DENSITY =
        optional(
            "neutral_density_stops",
            GearForms.stops(0, 20),
            Exposure::neutralDensity,
            "Stops taken by grey filters on the lens.");
    private static final Field<Exposure, Optional<Kelvin>> WHITE_BALANCE =
        optional(
            "white_balance_k",
            SetupForms.whiteBalance(),
            Exposure::whiteBalance,
            "The colour temperature that the camera was set to.");

    static final ObjectForm<Exposure> FORM =
        ObjectForm.of(
            "used_exposure",
            "What the camera was really set to; what is left out was as planned.",
            values ->
                new Exposure(
                    values.get(F_NUMBER),
                    values.get(TIME),
                    values.get(ISO),
                    values.get(DENSITY),
                    values.get(WHITE_BALANCE)),
            List.of(F_NUMBER, TIME, ISO, DENSITY, WHITE_BALANCE));

    /** A planned exposure with these changes. */
    public ShootingExposure in(ShootingExposure planned) {
      return new ShootingExposure(
          fNumber.orElse(planned.fNumber()),
          time.orElse(planned.time()),
          iso.orElse(planned.iso()),
          neutralDensity.orElse(planned.neutralDensity()),
          whiteBalance.or(planned::whiteBalance));
    }
  }

  /**
   * What was really set on one light; what is absent was as planned.
   *
   * @param distance from its target, along the planned direction; absent where the place is told
   * @param head the one that was used in place of the planned one
   */
  public record OfLight(
      LightId light,
      Optional<Stops> stopsDown,
      Optional<MeterReading> reading,
      Optional<Point> place,
      Optional<Metres> distance,
      Optional<Head> head) {

    private static final Field<OfLight, LightId> LIGHT =
        required("light", LightId.FORM, OfLight::light, "The light's id in the setup.");
    private static final Field<OfLight, Optional<Stops>> STOPS_DOWN =
        optional(
            "stops_down",
            GearForms.stops(0, 14),
            OfLight::stopsDown,
            "How far below full power it stood.");
    private static final Field<OfLight, Optional<MeterReading>> READING =
        optional(
            "reading",
            MeterReading.FORM,
            OfLight::reading,
            "What the meter gave for it alone; its ISO is the one that was really used.");
    private static final Field<OfLight, Optional<Point>> PLACE =
        optional("place", SetupForms.point(), OfLight::place, "Where its emitting face was.");
    private static final Field<OfLight, Optional<Metres>> DISTANCE =
        optional(
            "distance_m",
            GearForms.length(500, 2),
            OfLight::distance,
            "How far its face was from its target, in the planned direction; instead of a place.");
    private static final Field<OfLight, Optional<Head>> HEAD =
        optional("head", Head.FORM, OfLight::head, "The head, where it was another one.");

    static final ObjectForm<OfLight> FORM =
        ObjectForm.<OfLight>of(
                "used_light",
                "What was really set on one light; what is left out was as planned. It has a place"
                    + " or a distance_m, not both.",
                values ->
                    new OfLight(
                        values.get(LIGHT),
                        values.get(STOPS_DOWN),
                        values.get(READING),
                        values.get(PLACE),
                        values.get(DISTANCE),
                        values.get(HEAD)),
                List.of(LIGHT, STOPS_DOWN, READING, PLACE, DISTANCE, HEAD))
            .checked(
                (told, at, problems) -> {
                  if (told.place.isPresent() && told.distance.isPresent()) {
                    problems.add(
                        at.field("distance_m"),
                        "Distance must be left out where the place is told: the place says it.");
                  }
                });
  }

  private static final Field<Used, Exposure> EXPOSURE =
      usually(
          Exposure.AS_PLANNED,
          "exposure",
          Exposure.FORM,
          Used::exposure,
          "What the camera was really set to; left out where all was as planned.");
  private static final Field<Used, List<OfLight>> LIGHTS =
      list(
          "lights",
          OfLight.FORM,
          SetupForms.MOST_LIGHTS,
          Used::lights,
          "The lights of which something was not as planned, or was metered.");
  private static final Field<Used, Optional<String>> NOTE =
      optional("note", Forms.text(LONGEST_NOTE), Used::note, "What is worth knowing of the day.");

  /** The request as it stands in a body. */
  public static final ObjectForm<Used> FORM =
      ObjectForm.<Used>of(
              "used_request",
              "What was really used of a setup on the day; what it does not tell was as planned."
                  + " Each light is told once.",
              values -> new Used(values.get(EXPOSURE), values.get(LIGHTS), values.get(NOTE)),
              List.of(EXPOSURE, LIGHTS, NOTE))
          .checked(Used::check);

  /** Copies the lights. */
  public Used {
    lights = List.copyOf(lights);
  }

  private static void check(Used used, Pointer at, Problems problems) {
    Set<LightId> told = new HashSet<>();
    for (int i = 0; i < used.lights.size(); i++) {
      LightId id = used.lights.get(i).light();
      if (!told.add(id)) {
        problems.add(
            at.field("lights").item(i).field("light"),
            "Light (\"" + id + "\") is told already. Put all that is to be told of it together.");
      }
    }
  }
}
