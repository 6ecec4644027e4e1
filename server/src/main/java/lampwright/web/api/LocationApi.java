package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.people.StudioId;
import lampwright.place.Location;
import lampwright.place.LocationId;
import lampwright.tasks.Catalogued;
import lampwright.tasks.KeptLocation;
import lampwright.tasks.Listed;
import lampwright.tasks.LocationKeeping;
import lampwright.tasks.Refused;
import lampwright.tasks.SunWatching;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The locations of a studio: list, make, read, change, delete; their sun, light and setups. */
public final class LocationApi {

  private static final String DATE = "date";
  private static final String UTC_OFFSET = "utc_offset";
  private static final String AT = "at";
  private static final Set<String> PAGE = Set.of("cursor", "limit");

  private final Door door;
  private final LocationKeeping locations;
  private final SunWatching watching;

  public LocationApi(Door door, LocationKeeping locations, SunWatching watching) {
    this.door = door;
    this.locations = locations;
    this.watching = watching;
  }

  /** What is read here. */
  static Form<Location> form() {
    return Location.FORM;
  }

  /** Part of them, the last changed first. */
  public void list(Context context) {
    StudioId studio = SetupApi.studio(context);
    Listed<KeptLocation> page =
        locations.list(door.caller(context), studio, new Query(context, PAGE).page());
    Query.linkNext(context, page);
    context.json(
        new LocationJson.All(
            page.items().stream().map(LocationJson.Item::of).toList(), page.next()));
  }

  /** Keeps a new one. */
  public void create(Context context) {
    Location document = Documents.read(context, Location.FORM);
    KeptLocation created =
        locations.create(
            door.caller(context), SetupApi.studio(context), document, Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(LocationJson.One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptLocation location = current(context);
    if (!Preconditions.isKnown(context, location.revision())) {
      context.json(LocationJson.One.of(location));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, Location.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptLocation now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, Location.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, Location document) {
    KeptLocation replaced =
        locations.replace(
            door.caller(context),
            SetupApi.studio(context),
            location(context),
            Optional.of(based),
            document);
    Preconditions.show(context, replaced.revision());
    context.json(LocationJson.One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    locations.delete(
        door.caller(context),
        SetupApi.studio(context),
        location(context),
        Optional.of(basedOn(context)));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** The sun over it through a day: {@code ?date=&utc_offset=}. */
  public void sun(Context context) {
    Query query = new Query(context, Set.of(DATE, UTC_OFFSET));
    Optional<LocalDate> date = query.text(DATE, Forms.date());
    Optional<ZoneOffset> offset = query.text(UTC_OFFSET, Forms.utcOffset());
    query.mustBeSound();
    context.json(
        LocationJson.DayJson.of(
            watching.watch(
                door.caller(context), SetupApi.studio(context), location(context), date, offset)));
  }

  /** What was metered there about an hour: {@code ?at=}. */
  public void ambient(Context context) {
    Query query = new Query(context, Set.of(AT));
    Optional<OffsetDateTime> at = query.text(AT, Forms.dateTime());
    query.mustBeSound();
    OffsetDateTime hour =
        at.orElseThrow(
            () ->
                Refused.invalid(
                    "/" + AT, "At is missing: the hour, such as 2025-09-12T19:13:00+01:00."));
    context.json(
        LocationJson.AmbientJson.of(
            locations.ambient(
                door.caller(context), SetupApi.studio(context), location(context), hour)));
  }

  /** Part of the setups that were made there. */
  public void setups(Context context) {
    StudioId studio = SetupApi.studio(context);
    Listed<Catalogued> page =
        locations.setups(
            door.caller(context), studio, location(context), new Query(context, PAGE).page());
    Query.linkNext(context, page);
    context.json(
        new LocationJson.Setups(
            page.items().stream().map(LocationJson.SetupItem::of).toList(), page.next()));
  }

  private KeptLocation current(Context context) {
    return locations.get(door.caller(context), SetupApi.studio(context), location(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static LocationId location(Context context) {
    return LocationKeeping.id(context.pathParam("location"));
  }
}
