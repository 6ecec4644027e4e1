package lampwright.tasks;

import java.time.OffsetDateTime;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.place.AmbientNear;
import lampwright.place.Location;
import lampwright.place.LocationId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.store.Database;
import lampwright.store.Locations;
import lampwright.store.Page;
import lampwright.store.Setups;
import lampwright.store.StoredLocation;
import lampwright.store.StudioTransaction;

/** Keeps a studio's locations. Who may change setups may change them. */
public final class LocationKeeping {

  /** A busy studio has some hundred; more than this would be a mistake of somebody's script. */
  static final int MOST_LOCATIONS = 2_000;

  private static final String NAMED_AT = "/occasion/place/location";

  private final Database database;
  private final Ids ids;

  public LocationKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The location that an address names.
   *
   * @throws Refused NotFound where no location can have that id
   */
  public static LocationId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new LocationId(text);
  }

  /** Keeps a new location. */
  public KeptLocation create(Caller caller, StudioId studio, Location location, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_SETUPS);
          return once.make(
              in,
              ids,
              id -> create(in, new LocationId(id), location),
              id -> find(in, new LocationId(id)));
        });
  }

  private static KeptLocation create(StudioTransaction in, LocationId id, Location location) {
    Locations locations = new Locations(in);
    if (locations.count() >= MOST_LOCATIONS) {
      throw new Refused(
          new Refusal.Clash(
              "The studio has " + MOST_LOCATIONS + " locations already. Delete one first."));
    }
    String json = StoredDocuments.print(Location.FORM, location);
    return kept(in, locations.create(id, location.name(), json, ""));
  }

  /** A location as it is now. */
  public KeptLocation get(Caller caller, StudioId studio, LocationId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, id);
        });
  }

  private static KeptLocation get(StudioTransaction in, LocationId id) {
    return find(in, id).orElseThrow(Refused::notFound);
  }

  static Optional<KeptLocation> find(StudioTransaction in, LocationId id) {
    return new Locations(in).find(id).map(stored -> kept(in, stored));
  }

  /** What was metered at a location about an hour. */
  public AmbientNear ambient(Caller caller, StudioId studio, LocationId id, OffsetDateTime at) {
    return AmbientNear.of(get(caller, studio, id).document(), at);
  }

  /** Whether a member may make, change and delete locations. */
  public boolean mayWrite(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> Leave.ask(in, Permission.READ_SETUPS).may(Permission.WRITE_SETUPS));
  }

  /** At most so many locations, the last changed first. */
  public Listed<KeptLocation> list(Caller caller, StudioId studio, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          Page<StoredLocation> page = new Locations(in).list(after, wish.limit());
          return PageCursor.listed(
              new Page<>(
                  page.items().stream()
                      .flatMap(
                          stored ->
                              StoredDocuments.find(Location.FORM, stored.document(), stored.id())
                                  .map(document -> kept(in, stored, document))
                                  .stream())
                      .toList(),
                  page.next()));
        });
  }

  /** At most so many of the setups that were made at a location, the last changed first. */
  public Listed<Catalogued> setups(
      Caller caller, StudioId studio, LocationId id, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.ask(in);
          get(in, id);
          return PageCursor.listed(
              Cataloguing.page(
                  in, sight, new Setups(in).listAt(id, sight.standings(), after, wish.limit())));
        });
  }

  /**
   * Puts another document in the place of the one that it was made from.
   *
   * @param basedOn the revision it was made from; empty replaces whatever is there
   */
  public KeptLocation replace(
      Caller caller, StudioId studio, LocationId id, Optional<Integer> basedOn, Location location) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_SETUPS);
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          String json = StoredDocuments.print(Location.FORM, location);
          Cataloguing.mustBeSaved(new Locations(in).replace(id, from, location.name(), json, ""));
          return get(in, id);
        });
  }

  /**
   * Takes a location away; its revisions are kept.
   *
   * @throws Refused Clash where setups name it
   */
  public void delete(Caller caller, StudioId studio, LocationId id, Optional<Integer> basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_SETUPS);
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          int saved = Cataloguing.mustBeSaved(new Locations(in).delete(id, from, ""));
          // Counted after the row is held, so that a setup that is on its way is seen.
          int setups = new Setups(in).countAt(id);
          if (setups > 0) {
            throw new Refused(
                new Refusal.Clash(
                    setups == 1
                        ? "1 setup was made at this location. Let it name another place first."
                        : setups
                            + " setups were made at this location. Let them name another place"
                            + " first."));
          }
          return saved;
        });
  }

  /**
   * Holds a setup that is about to be written to what it says of its location.
   *
   * @throws Refused Invalid where it names one that the studio does not have
   */
  static void mustHaveLocation(StudioTransaction in, SetupDocument setup) {
    setup
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(Occasion.Place::location)
        .filter(id -> !new Locations(in).holds(id))
        .ifPresent(
            id -> {
              throw Refused.invalid(
                  NAMED_AT,
                  "Location (\"%s\") must be the id of one of the studio's locations."
                      .formatted(id));
            });
  }

  private static KeptLocation kept(StudioTransaction in, StoredLocation stored) {
    return kept(in, stored, StoredDocuments.read(Location.FORM, stored.document()));
  }

  private static KeptLocation kept(StudioTransaction in, StoredLocation stored, Location document) {
    return new KeptLocation(
        stored.id(),
        stored.revision(),
        stored.changedAt(),
        Cataloguing.name(in, stored.changedBy()),
        document);
  }
}
