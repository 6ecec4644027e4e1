package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.place.LocationId;

/**
 * When and where the picture was made.
 *
 * @param time on the place's own clocks
 * @param wind its mean, as forecasts give it
 * @param utcOffset how far those clocks are ahead of universal time
 */
public record Occasion(
    Optional<Place> place,
    Optional<LocalDate> date,
    Optional<LocalTime> time,
    Optional<ZoneOffset> utcOffset,
    Optional<String> weather,
    Optional<MetresPerSecond> wind) {

  /**
   * A place on earth.
   *
   * @param kind the kind of place in the studio's own word: harbour, quarry, kitchen
   * @param location the studio's location that it is; this place stays readable without it
   */
  public record Place(
      String name,
      Optional<String> kind,
      Optional<Boolean> indoors,
      Optional<Degrees> latitude,
      Optional<Degrees> longitude,
      Optional<LocationId> location) {

    private static final Field<Place, String> NAME =
        required("name", SetupForms.line(), Place::name, "What the studio calls the place.");
    private static final Field<Place, Optional<String>> KIND =
        optional(
            "kind", Forms.text(60), Place::kind, "The kind of place: harbour, quarry, kitchen.");
    private static final Field<Place, Optional<Boolean>> INDOORS =
        optional("indoors", Forms.flag(), Place::indoors, "Whether it has a roof.");
    private static final Field<Place, Optional<Degrees>> LATITUDE =
        optional(
            "latitude_deg",
            Forms.number("°").atLeast(-90).atMost(90).as(Degrees::new, Degrees::value),
            Place::latitude,
            "North is positive.");
    private static final Field<Place, Optional<Degrees>> LONGITUDE =
        optional(
            "longitude_deg",
            Forms.number("°").atLeast(-180).atMost(180).as(Degrees::new, Degrees::value),
            Place::longitude,
            "East is positive.");
    private static final Field<Place, Optional<LocationId>> LOCATION =
        optional(
            "location",
            LocationId.FORM,
            Place::location,
            "The id of the studio's location that it is.");

    static final ObjectForm<Place> FORM =
        ObjectForm.<Place>of(
                "place",
                "A place on earth. Latitude and longitude go together.",
                values ->
                    new Place(
                        values.get(NAME),
                        values.get(KIND),
                        values.get(INDOORS),
                        values.get(LATITUDE),
                        values.get(LONGITUDE),
                        values.get(LOCATION)),
                List.of(NAME, KIND, INDOORS, LATITUDE, LONGITUDE, LOCATION))
            .checked(
                (place, at, problems) -> {
                  if (place.latitude().isPresent() != place.longitude().isPresent()) {
                    String missing =
                        place.latitude().isPresent() ? "longitude_deg" : "latitude_deg";
                    problems.add(
                        at.field(missing), "Latitude and longitude must be given together.");
                  }
                });
  }

  private static final Field<Occasion, Optional<Place>> PLACE =
      optional("place", Place.FORM, Occasion::place, "Where.");
  private static final Field<Occasion, Optional<LocalDate>> DATE =
      optional("date", Forms.date(), Occasion::date, "The day, such as 2024-10-03.");
  private static final Field<Occasion, Optional<LocalTime>> TIME =
      optional("time", Forms.timeOfDay(), Occasion::time, "The time on the place's own clocks.");
  private static final Field<Occasion, Optional<ZoneOffset>> UTC_OFFSET =
      optional(
          "utc_offset",
          Forms.utcOffset(),
          Occasion::utcOffset,
          "How far the place's clocks are ahead of universal time, such as +01:00; for the sun.");
  private static final Field<Occasion, Optional<String>> WEATHER =
      optional("weather", SetupForms.line(), Occasion::weather, "The weather.");
  private static final Field<Occasion, Optional<MetresPerSecond>> WIND =
      optional(
          "wind_m_per_s",
          Forms.number("m/s")
              .atLeast(0)
              .atMost(60)
              .maybe(5)
              .as(MetresPerSecond::new, MetresPerSecond::value),
          Occasion::wind,
          "The mean wind in metres a second, as forecasts give it; gusts are reckoned on top.");

  public static final ObjectForm<Occasion> FORM =
      ObjectForm.of(
          "occasion",
          "When and where the picture was made.",
          values ->
              new Occasion(
                  values.get(PLACE),
                  values.get(DATE),
                  values.get(TIME),
                  values.get(UTC_OFFSET),
                  values.get(WEATHER),
                  values.get(WIND)),
          List.of(PLACE, DATE, TIME, UTC_OFFSET, WEATHER, WIND));
}
