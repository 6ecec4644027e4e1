package lampwright;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.search.Follower;
import lampwright.search.FollowerState;
import lampwright.search.Search;
import lampwright.search.SetupIndex;
import lampwright.store.Database;
import lampwright.tasks.Adapting;
import lampwright.tasks.Calibrating;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Comparing;
import lampwright.tasks.Exporting;
import lampwright.tasks.Finding;
import lampwright.tasks.GearCalibrating;
import lampwright.tasks.GearImporting;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.Histories;
import lampwright.tasks.Importing;
import lampwright.tasks.IndexedStudios;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.LocationKeeping;
import lampwright.tasks.NoteKeeping;
import lampwright.tasks.Recording;
import lampwright.tasks.Stating;
import lampwright.tasks.SunWatching;
import lampwright.tasks.TakeLogging;
import lampwright.tasks.Tracing;

/** The catalogue's own part of the house: the search index that follows, and the tasks on it. */
final class Catalogue implements AutoCloseable {

  private static final String INDEX = "index";
  private static final String EXPORTS = "exports";
  private static final String IMPORTS = "imports";

  private final SetupIndex index;
  private final Follower follower;
  private final Cataloguing cataloguing;
  private final KitKeeping kits;
  private final GearKeeping gear;
  private final GearImporting gearImporting;
  private final GearCalibrating gearCalibrating;
  private final PictureTasks pictures;
  private final Tracing tracing;
  private final Recording recording;
  private final Histories histories;
  private final Stating stating;
  private final Comparing comparing;
  private final Finding finding;
  private final Adapting adapting;
  private final LocationKeeping locations;
  private final TakeLogging takes;
  private final NoteKeeping notes;
  private final SunWatching sun;
  private final Calibrating calibrating;
  private final Exporting exporting;
  private final Importing importing;

  /**
   * Where files are.
   *
   * @param data this server's own
   * @param pictures may be that of several servers
   */
  record Folders(Path data, Path pictures) {}

  /**
   * Opens the index in the data folder and lets it follow the database.
   *
   * @throws lampwright.search.IndexFailure where another process has the folder, or it cannot be
   *     written
   */
  Catalogue(Database database, Folders folders, Ids ids, Clock clock) {
    IndexedStudios studios = new IndexedStudios(database);
    index = SetupIndex.open(folders.data().resolve(INDEX), studios.identity());
    follower = Follower.start(index, studios);
    cataloguing = new Cataloguing(database, follower, ids);
    kits = new KitKeeping(database, ids);
    gear = new GearKeeping(database, ids);
    gearImporting = new GearImporting(database, ids);
    gearCalibrating = new GearCalibrating(database, new Calibrating(database));
    // A folder a database: what has no row in this one may well have one in another.
    pictures =
        PictureTasks.open(
            database, folders.pictures().resolve(studios.identity()), cataloguing, ids);
    tracing = new Tracing(database);
    recording = new Recording(database, cataloguing);
    histories = new Histories(database, cataloguing);
    stating = new Stating(database, cataloguing);
    comparing = new Comparing(database);
    finding = new Finding(database, new Search(index));
    adapting = new Adapting(database);
    locations = new LocationKeeping(database, ids);
    takes = new TakeLogging(database, cataloguing, ids);
    notes = new NoteKeeping(database, ids);
    sun = new SunWatching(cataloguing, locations, clock);
    calibrating = new Calibrating(database);
    exporting =
        new Exporting(
            database,
            pictures.upkeep(),
            folders.data().resolve(EXPORTS).resolve(studios.identity()));
    importing =
        new Importing(
            database,
            cataloguing,
            pictures.upkeep(),
            pictures.adding(),
            ids,
            clock,
            folders.data().resolve(IMPORTS).resolve(studios.identity()));
  }

  Cataloguing cataloguing() {
    return cataloguing;
  }

  KitKeeping kits() {
    return kits;
  }

  GearKeeping gear() {
    return gear;
  }

  GearImporting gearImporting() {
    return gearImporting;
  }

  GearCalibrating gearCalibrating() {
    return gearCalibrating;
  }

  PictureTasks pictures() {
    return pictures;
  }

  Tracing tracing() {
    return tracing;
  }

  Recording recording() {
    return recording;
  }

  Histories histories() {
    return histories;
  }

  Stating stating() {
    return stating;
  }

  Comparing comparing() {
    return comparing;
  }

  Finding finding() {
    return finding;
  }

  Adapting adapting() {
    return adapting;
  }

  LocationKeeping locations() {
    return locations;
  }

  TakeLogging takes() {
    return takes;
  }

  NoteKeeping notes() {
    return notes;
  }

  SunWatching sun() {
    return sun;
  }

  Calibrating calibrating() {
    return calibrating;
  }

  Exporting exporting() {
    return exporting;
  }

  Importing importing() {
    return importing;
  }

  /** Why a search might miss something now; empty where it does not. */
  Optional<String> trouble() {
    return switch (follower.state()) {
      case FollowerState.Ready ready -> Optional.empty();
      case FollowerState.Behind behind -> Optional.of("The search index is catching up.");
      case FollowerState.Rebuilding building ->
          Optional.of(
              "The search index is being built: %d of about %d setups."
                  .formatted(building.done(), building.total()));
      case FollowerState.Failed failed -> Optional.of("The search index: " + failed.reason());
    };
  }

  @Override
  public void close() {
    importing.close();
    pictures.close();
    follower.close();
    index.close();
  }
}
