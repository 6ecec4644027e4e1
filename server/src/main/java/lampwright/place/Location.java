package lampwright.place;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;

/**
 * A place where a studio works.
 *
 * @param kind in the studio's own word, as a setup's place has it: harbour, quarry, kitchen
 * @param altitude above the sea
 * @param timeZone of the place's clocks
 * @param access how one gets in, and where one parks
 * @param hazards what can hurt there
 */
public record Location(
    String name,
    Optional<String> kind,
    Optional<Boolean> indoors,
    Degrees latitude,
    Degrees longitude,
    Optional<Metres> altitude,
    Optional<ZoneId> timeZone,
    Optional<String> access,
    Optional<Power> power,
    List<String> hazards,
    List<LocationPermission> permissions,
    List<AmbientReading> ambientReadings,
    Optional<String> notes) {

  private static final Field<Location, String> NAME =
      required("name", PlaceForms.name(), Location::name, "What the studio calls it.");
  private static final Field<Location, Optional<String>> KIND =
      optional(
          "kind", Forms.text(60), Location::kind, "The kind of place: harbour, quarry, kitchen.");
  private static final Field<Location, Optional<Boolean>> INDOORS =
      optional("indoors", Forms.flag(), Location::indoors, "Whether it has a roof.");
  private static final Field<Location, Degrees> LATITUDE =
      required("latitude_deg", PlaceForms.degrees(90), Location::latitude, "North is positive.");
  private static final Field<Location, Degrees> LONGITUDE =
      required("longitude_deg", PlaceForms.degrees(180), Location::longitude, "East is positive.");
  private static final Field<Location, Optional<Metres>> ALTITUDE =
      optional(
          "altitude_m",
          Forms.number("m").atLeast(-500).atMost(9_000).maybe(0).as(Metres::new, Metres::value),
          Location::altitude,
          "Metres above the sea.");
  private static final Field<Location, Optional<ZoneId>> TIME_ZONE =
      optional(
          "time_zone",
          PlaceForms.timeZone(),
          Location::timeZone,
          "The zone of the place's clocks by its name in the IANA database, such as"
              + " Europe/Lisbon.");
  private static final Field<Location, Optional<String>> ACCESS =
      optional("access", PlaceForms.paragraph(), Location::access, "How one gets in, and when.");
  private static final Field<Location, Optional<Power>> POWER =
      optional("power", Power.FORM, Location::power, "The mains there.");
  private static final Field<Location, List<String>> HAZARDS =
      list("hazards", PlaceForms.paragraph(), 40, Location::hazards, "What can hurt there.");
  private static final Field<Location, List<LocationPermission>> PERMISSIONS =
      list(
          "permissions",
          LocationPermission.FORM,
          40,
          Location::permissions,
          "Who has allowed what, and until when.");
  private static final Field<Location, List<AmbientReading>> AMBIENT =
      list(
          "ambient_readings",
          AmbientReading.FORM,
          500,
          Location::ambientReadings,
          "The ambient light that was metered there.");
  private static final Field<Location, Optional<String>> NOTES =
      optional("notes", PlaceForms.paragraph(), Location::notes, "Anything worth knowing of it.");

  /** The location as a document. */
  public static final ObjectForm<Location> FORM =
      ObjectForm.of(
          "location",
          "A place where a studio works.",
          values ->
              new Location(
                  values.get(NAME),
                  values.get(KIND),
                  values.get(INDOORS),
                  values.get(LATITUDE),
                  values.get(LONGITUDE),
                  values.get(ALTITUDE),
                  values.get(TIME_ZONE),
                  values.get(ACCESS),
                  values.get(POWER),
                  values.get(HAZARDS),
                  values.get(PERMISSIONS),
                  values.get(AMBIENT),
                  values.get(NOTES)),
          List.of(
              NAME,
              KIND,
              INDOORS,
              LATITUDE,
              LONGITUDE,
              ALTITUDE,
              TIME_ZONE,
              ACCESS,
              POWER,
              HAZARDS,
              PERMISSIONS,
              AMBIENT,
              NOTES));

  /** Where on earth it is. */
  public PlaceOnEarth onEarth() {
    return new PlaceOnEarth(latitude, longitude, altitude.orElse(new Metres(0)));
  }

  /** How far its clocks are ahead of universal time at noon of a day; absent without a zone. */
  public Optional<ZoneOffset> offsetOn(LocalDate day) {
    return timeZone.map(zone -> day.atTime(LocalTime.NOON).atZone(zone).getOffset());
  }
}
