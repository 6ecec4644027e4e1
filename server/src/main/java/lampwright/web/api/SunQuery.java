package lampwright.web.api;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.document.Problems;
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
    Parts parts = new Parts(context);
    Optional<Degrees> latitude = parts.read(LATITUDE, degrees(90), true);
    Optional<Degrees> longitude = parts.read(LONGITUDE, degrees(180), true);
    Optional<LocalDate> from = parts.read(FROM, Forms.date(), false);
    Optional<Integer> days =
        parts.read(DAYS, Forms.count(SunSearch.FEWEST_DAYS, SunSearch.MOST_DAYS), true);
    Optional<ZoneOffset> offset = parts.read(UTC_OFFSET, Forms.utcOffset(), false);
    parts.mustBeSound();
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

  /** The parts of an address, and what is wrong with them. */
  private record Parts(Context context, List<Problem> wrong, Problems problems) {

    Parts(Context context) {
      this(context, new ArrayList<>(), new Problems());
      for (String name : context.queryParamMap().keySet()) {
        if (!KNOWN.contains(name)) {
          wrong.add(
              new Problem(
                  "/" + name,
                  "There is no wish by this name. Known are: from, days, latitude_deg,"
                      + " longitude_deg, utc_offset."));
        }
      }
    }

    <T> Optional<T> read(String name, Form<T> form, boolean isNumber) {
      Optional<String> written =
          context.queryParams(name).stream().filter(value -> !value.isBlank()).findFirst();
      return written.flatMap(
          text ->
              form.read(
                  isNumber ? numberOrText(text) : text, Pointer.root().field(name), problems));
    }

    private static Object numberOrText(String text) {
      boolean isNumber = text.matches("-?\\d{1,9}(\\.\\d{1,15})?");
      return isNumber ? (Object) Double.valueOf(text) : text;
    }

    void mustBeSound() {
      wrong.addAll(problems.list());
      if (!wrong.isEmpty()) {
        throw Refused.invalid(wrong);
      }
    }
  }
}
