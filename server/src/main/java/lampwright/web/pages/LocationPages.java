package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.document.Forms;
import lampwright.document.Reading;
import lampwright.people.StudioId;
import lampwright.place.Location;
import lampwright.place.LocationId;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.KeptLocation;
import lampwright.tasks.Leave;
import lampwright.tasks.Listed;
import lampwright.tasks.LocationKeeping;
import lampwright.tasks.Once;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SunWatching;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The pages of a studio's locations: the list, one, and the forms that make and change one. */
public final class LocationPages {

  private final Door door;
  private final LocationKeeping locations;
  private final SunWatching watching;
  private final Clock clock;
  private final Templates templates;
  private final StudioLayouts layouts;

  /**
   * @param clock says which permissions are over
   */
  public LocationPages(
      Door door,
      LocationKeeping locations,
      SunWatching watching,
      Clock clock,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.locations = locations;
    this.watching = watching;
    this.clock = clock;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows the list: {@code /studios/{studio}/locations}. */
  public void list(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    Optional<String> cursor = Optional.ofNullable(context.queryParam("cursor"));
    Listed<KeptLocation> page =
        locations.list(caller, studio, new Listed.Wish(cursor, Listed.MOST));
    String path = path(studio);
    Wording words = layouts.words(context);
    Layout layout = layouts.of(context, studio, words.say("pages.location.all"));
    LocationView view = new LocationView(layout.words());
    templates.show(
        context,
        "locations",
        new LocationsPage(
            layout,
            page.items().stream().map(location -> card(path, location, view, words)).toList(),
            page.next().map(next -> Address.of(path).with("cursor", next).text()).orElse(""),
            locations.mayWrite(caller, studio) ? path + "/new" : ""));
  }

  private static LocationsPage.Card card(
      String path, KeptLocation location, LocationView view, Wording words) {
    Location document = location.document();
    int hazards = document.hazards().size();
    return new LocationsPage.Card(
        document.name(),
        path + "/" + location.id(),
        view.facts(document),
        hazards == 0 ? "" : words.count("pages.location.hazardCount", hazards));
  }

  /** Shows one: {@code /studios/{studio}/locations/{location}?date=}. */
  public void show(Context context) {
    StudioId studio = studio(context);
    LocationId id = id(context);
    Caller caller = door.caller(context);
    String asked = Optional.ofNullable(context.queryParam("date")).orElse("");
    Reading<LocalDate> date = Forms.date().read(asked);
    Optional<LocalDate> day =
        date instanceof Reading.Sound<LocalDate>(LocalDate value)
            ? Optional.of(value)
            : Optional.empty();
    Optional<String> wrong =
        asked.isEmpty() || day.isPresent()
            ? Optional.empty()
            : Optional.of(layouts.words(context).say("pages.location.badDate"));
    SunWatching.WatchedDay watched = watching.watch(caller, studio, id, day, Optional.empty());
    Location location = watched.location().document();
    String path = path(studio) + "/" + id;
    LocalDate today =
        LocalDate.ofInstant(clock.instant(), location.timeZone().orElse(ZoneOffset.UTC));
    Layout layout = layouts.of(context, studio, location.name());
    LocationView view = new LocationView(layout.words());
    templates.show(
        context,
        "location",
        new LocationPage(
            layout,
            location.name(),
            view.facts(location),
            location.hazards(),
            location.access().orElse(""),
            location.power().map(view::power).orElse(""),
            location.permissions().stream()
                .map(permission -> view.permission(permission, today))
                .toList(),
            view.sun(watched.day(), path, wrong),
            location.ambientReadings().stream().map(view::reading).toList(),
            view.readingsChart(location.ambientReadings(), watched.day()),
            locations.setups(caller, studio, id, Listed.Wish.first()).items().stream()
                .map(setup -> link(studio, setup))
                .toList(),
            location.notes().orElse(""),
            locations.mayWrite(caller, studio) ? path + "/change" : "",
            path(studio)));
  }

  private static Link link(StudioId studio, Catalogued setup) {
    return new Link(setup.document().title(), SetupPages.setupPath(studio, setup.id()));
  }

  /** Shows the form for a new one: {@code /studios/{studio}/locations/new}. */
  public void showNew(Context context) {
    StudioId studio = studio(context);
    mustWrite(context, studio);
    form(context, studio, Optional.empty(), LocationFields.empty(), FormErrors.none());
  }

  /** Shows the form for one that is there: {@code …/locations/{location}/change}. */
  public void showChange(Context context) {
    StudioId studio = studio(context);
    mustWrite(context, studio);
    KeptLocation location = locations.get(door.caller(context), studio, id(context));
    form(
        context,
        studio,
        Optional.of(location),
        LocationFields.of(location.document()),
        FormErrors.none());
  }

  private void mustWrite(Context context, StudioId studio) {
    if (!locations.mayWrite(door.caller(context), studio)) {
      throw Refused.notAllowed("Only authors and owners change locations.");
    }
  }

  private void form(
      Context context,
      StudioId studio,
      Optional<KeptLocation> of,
      LocationForm.Fields fields,
      FormErrors errors) {
    String path = path(studio);
    String here = of.map(location -> path + "/" + location.id()).orElse(path);
    Wording words = layouts.words(context);
    String heading =
        of.map(l -> words.say("pages.location.changeOne", l.document().name()))
            .orElseGet(() -> words.say("pages.location.new"));
    templates.show(
        context,
        "locationForm",
        new LocationForm(
            layouts.of(context, studio, heading),
            heading,
            of.isPresent() ? here + "/change" : path + "/new",
            here,
            door.csrfToken(context),
            of.map(KeptLocation::revision).orElse(0),
            fields,
            errors));
  }

  /** Keeps a new one. */
  public void create(Context context) {
    StudioId studio = studio(context);
    FormFields sent = Body.form(context);
    try {
      Location document = sound(LocationFields.read(sent::get, Optional.empty()));
      KeptLocation made = locations.create(door.caller(context), studio, document, Once.unkeyed());
      context.redirect(path(studio) + "/" + made.id(), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, Optional.empty(), sent, refused);
    }
  }

  /** Changes one. */
  public void change(Context context) {
    StudioId studio = studio(context);
    LocationId id = id(context);
    Caller caller = door.caller(context);
    FormFields sent = Body.form(context);
    KeptLocation current = locations.get(caller, studio, id);
    String revision = sent.get(LocationForm.REVISION);
    int basedOn = revision.matches("[1-9]\\d{0,8}") ? Integer.parseInt(revision) : 0;
    try {
      Location document = sound(LocationFields.read(sent::get, Optional.of(current.document())));
      locations.replace(caller, studio, id, Optional.of(basedOn), document);
      context.redirect(path(studio) + "/" + id, HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, studio, Optional.of(current), sent, refused);
    }
  }

  private static Location sound(Reading<Location> reading) {
    return switch (reading) {
      case Reading.Sound<Location>(Location value) -> value;
      case Reading.Faulty<Location> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** Shows the form as it was sent, with what is wrong with it. */
  private void again(
      Context context,
      StudioId studio,
      Optional<KeptLocation> of,
      FormFields sent,
      Refused refused) {
    FormErrors errors =
        switch (refused.refusal()) {
          case Refusal.Invalid(var problems) -> LocationFields.errors(problems);
          case Refusal.Stale _ ->
              new FormErrors(
                  List.of(
                      new FormErrors.FormError(
                          "", layouts.words(context).say("pages.location.changedSince"))));
          default -> throw refused;
        };
    context.status(
        refused.refusal() instanceof Refusal.Stale
            ? HttpStatus.PRECONDITION_FAILED
            : HttpStatus.UNPROCESSABLE_CONTENT);
    form(context, studio, of, LocationFields.typed(sent::get), errors);
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/locations";
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  private static LocationId id(Context context) {
    return LocationKeeping.id(context.pathParam("location"));
  }
}
