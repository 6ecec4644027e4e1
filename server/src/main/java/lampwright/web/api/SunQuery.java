package lampwright.web.api;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.sun.SunSearch;
import lampwright.engine.unit.Degrees;
import lampwright.tasks.Refused;
import lampwright.tasks.SunWatching;

/** What is asked of the sun in an address: {@code ?from=&days=&latitude_deg=&longitude_deg=&…}. */
final class SunQuery {

  private static final String FROM = "from";
  private static final String DAYS = "days";
  private static final String LATITUDE = "latitude_deg";
  private static final String LONGITUDE = "longitude_deg";
  private static final String UTC_OFFSET = "utc_offset";
  private static final Set<String> KNOWN = Set.of(FROM, DAYS, LATITUDE, LONGITUDE, UTC_OFFSET);

  private SunQuery() {}

  /**
   * Reads it.
   *
   * @throws Refused Invalid for an unknown name or a value out of bounds
   */
  static SunWatching.Wishes wishes(Context context) {
    Query query = new Query(context, KNOWN);
    Optional<Degrees> latitude = query.number(LATITUDE, degrees(90));
    Optional<Degrees> longitude = query.number(LONGITUDE, degrees(180));
    Optional<LocalDate> from = query.text(FROM, Forms.date());
    Optional<Integer> days =
        query.number(DAYS, Forms.count(SunSearch.FEWEST_DAYS, SunSearch.MOST_DAYS));
    Optional<ZoneOffset> offset = query.text(UTC_OFFSET, Forms.utcOffset());
    query.mustBeSound();
    if (latitude.isPresent() != longitude.isPresent()) {
      throw Refused.invalid(
          "/" + (latitude.isPresent() ? LONGITUDE : LATITUDE),
          "Latitude and longitude must be given together.");
    }
    return new SunWatching.Wishes(
        from,
        days.orElse(SunSearch.MOST_DAYS),
        latitude.flatMap(north -> longitude.map(east -> PlaceOnEarth.of(north, east))),
        offset);
  }

  private static Form<Degrees> degrees(double most) {
    return Forms.number("°").atLeast(-most).atMost(most).as(Degrees::new, Degrees::value);
  }
}
