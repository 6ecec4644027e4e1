package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.gear.stock.GearItem;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.place.Location;
import lampwright.place.LocationId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.Locations;
import lampwright.store.StudioTransaction;

/** Lays out what somebody needs who changes a setup by hand, or makes a new one. */
public final class Editing {

  /** More than a list to choose from can be read. */
  private static final int MOST_OFFERED = 200;

  private final Database database;

  public Editing(Database database) {
    this.database = database;
  }

  /**
   * What lies on the desk.
   *
   * @param setup as it is now; absent for a new one from nothing
   * @param gear all of the studio's, to choose from, by kind and name
   * @param locations the studio's that were changed last, to choose from
   */
  public record Desk(Optional<Catalogued> setup, List<GearItem> gear, List<Spot> locations) {

    /** Copies the lists. */
    public Desk {
      gear = List.copyOf(gear);
      locations = List.copyOf(locations);
    }
  }

  /** One of the studio's locations. */
  public record Spot(LocationId id, Location location) {}

  /**
   * For one that is there: to change it, or to make another from it.
   *
   * @throws Refused NotAllowed for who may not change setups, NotFound where there is none
   */
  public Desk open(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.of(Leave.ask(in, Permission.WRITE_SETUPS));
          return new Desk(Optional.of(Cataloguing.get(in, sight, id)), gear(in), locations(in));
        });
  }

  /**
   * For a new one from nothing.
   *
   * @throws Refused NotAllowed for who may not make setups
   */
  public Desk openNew(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_SETUPS);
          return new Desk(Optional.empty(), gear(in), locations(in));
        });
  }

  private static List<GearItem> gear(StudioTransaction in) {
    return GearKeeping.readable(in, new Gear(in).listAll(Optional.empty())).stream()
        .map(KeptGear::document)
        .toList();
  }

  private static List<Spot> locations(StudioTransaction in) {
    return new Locations(in)
        .list(Optional.empty(), MOST_OFFERED).items().stream()
            .flatMap(
                stored ->
                    StoredDocuments.find(Location.FORM, stored.document(), stored.id())
                        .map(location -> new Spot(stored.id(), location))
                        .stream())
            .toList();
  }
}
