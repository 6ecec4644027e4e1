package lampwright;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import lampwright.meaning.Meanings;
import lampwright.meaning.Sentences;
import lampwright.people.Ids;
import lampwright.search.Bookmark;
import lampwright.search.Follower;
import lampwright.search.FollowerState;
import lampwright.search.IndexFailure;
import lampwright.search.IndexRebuild;
import lampwright.search.Search;
import lampwright.search.SetupIndex;
import lampwright.search.Suggestions;
import lampwright.store.Database;
import lampwright.store.PicturePlace;
import lampwright.tasks.Adapting;
import lampwright.tasks.Calibrating;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Comparing;
import lampwright.tasks.Editing;
import lampwright.tasks.Exporting;
import lampwright.tasks.Finding;
import lampwright.tasks.GearCalibrating;
import lampwright.tasks.GearImporting;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.GearMetering;
import lampwright.tasks.Histories;
import lampwright.tasks.Importing;
import lampwright.tasks.IndexKeeping;
import lampwright.tasks.IndexedStudios;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.LocationKeeping;
import lampwright.tasks.MeaningUpkeep;
import lampwright.tasks.NoteKeeping;
import lampwright.tasks.Proposing;
import lampwright.tasks.Recording;
import lampwright.tasks.SearchKeeping;
import lampwright.tasks.SearchNews;
import lampwright.tasks.SignatureUpkeep;
import lampwright.tasks.Signing;
import lampwright.tasks.Stating;
import lampwright.tasks.Suggesting;
import lampwright.tasks.SunWatching;
import lampwright.tasks.TakeLogging;
import lampwright.tasks.TakingOut;
import lampwright.tasks.Tracing;
import lampwright.web.api.SavedQuestion;

/** The catalogue's own part of the house: the search index that follows, and the tasks on it. */
final class Catalogue implements AutoCloseable {

  private static final String INDEX = "index";
  private static final String EXPORTS = "exports";
  private static final String TAKEN_OUT = "taken-out";
  private static final String IMPORTS = "imports";

  private final SetupIndex index;
  private final Follower follower;
  private final Optional<Sentences> sentences;
  private final Optional<MeaningUpkeep> meaningUpkeep;
  private final Cataloguing cataloguing;
  private final KitKeeping kits;
  private final GearKeeping gear;
  private final GearImporting gearImporting;
  private final GearCalibrating gearCalibrating;
  private final GearMetering gearMetering;
  private final PictureTasks pictures;
  private final Tracing tracing;
  private final Editing editing;
  private final Recording recording;
  private final Proposing proposing;
  private final Signing signing;
  private final SignatureUpkeep signatures;
  private final Histories histories;
  private final Stating stating;
  private final Comparing comparing;
  private final Finding finding;
  private final Suggesting suggesting;
  private final SearchNews searchNews;
  private final SearchKeeping searchKeeping;
  private final Adapting adapting;
  private final LocationKeeping locations;
  private final TakeLogging takes;
  private final NoteKeeping notes;
  private final SunWatching sun;
  private final Calibrating calibrating;
  private final Exporting exporting;
  private final TakingOut takingOut;
  private final Importing importing;
  private final IndexKeeping indexKeeping;

  /**
   * Where files are, and how it searches.
   *
   * @param data this server's own
   * @param pictures may be that of several servers
   * @param byMeaning whether searches go by what texts mean too
   */
  record Choices(Path data, PicturePlace pictures, boolean byMeaning) {}

  /**
   * Opens the index in the data folder and lets it follow the database.
   *
   * @throws lampwright.search.IndexFailure where another process has the folder, or it cannot be
   *     written
   */
  Catalogue(Database database, Choices choices, Ids ids, Clock clock) {
    IndexedStudios studios = new IndexedStudios(database);
    index = openIndex(choices.data(), studios);
    follower = Follower.start(index, studios);
    sentences = choices.byMeaning() ? Optional.of(Sentences.load()) : Optional.empty();
    meaningUpkeep = sentences.map(loaded -> MeaningUpkeep.start(database, loaded));
    cataloguing = new Cataloguing(database, follower, ids);
    kits = new KitKeeping(database, ids);
    gear = new GearKeeping(database, ids);
    gearImporting = new GearImporting(database, ids);
    gearCalibrating = new GearCalibrating(database, new Calibrating(database));
    gearMetering = new GearMetering(database);
    // A place a database: what has no row in this one may well have one in another.
    pictures =
        PictureTasks.open(database, choices.pictures().of(studios.identity()), cataloguing, ids);
    tracing = new Tracing(database);
    editing = new Editing(database);
    recording = new Recording(database, cataloguing);
    proposing = new Proposing(database, cataloguing, ids);
    signing = new Signing(database);
    histories = new Histories(database, cataloguing);
    stating = new Stating(database, cataloguing);
    comparing = new Comparing(database);
    Search search =
        new Search(index, sentences.<Meanings>map(loaded -> loaded).orElse(Meanings.NONE));
    finding = new Finding(database, search);
    suggesting = new Suggesting(database, search, new Suggestions(index));
    searchNews = new SearchNews(database, finding, SavedQuestion::read);
    searchKeeping = new SearchKeeping(database, searchNews, ids);
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
            choices.data().resolve(EXPORTS).resolve(studios.identity()));
    takingOut =
        new TakingOut(
            database,
            pictures.upkeep(),
            choices.data().resolve(TAKEN_OUT).resolve(studios.identity()));
    importing =
        new Importing(
            database,
            cataloguing,
            pictures.upkeep(),
            pictures.adding(),
            ids,
            clock,
            choices.data().resolve(IMPORTS).resolve(studios.identity()));
    indexKeeping = new IndexKeeping(database, index, follower, sentences, clock);
    signatures = SignatureUpkeep.start(database);
  }

  /**
   * Opens the index of a data folder.
   *
   * @throws lampwright.search.IndexFailure where another process has the folder, or it cannot be
   *     written
   */
  static SetupIndex openIndex(Path data, IndexedStudios studios) {
    return SetupIndex.open(data.resolve(INDEX), studios.identity());
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

  Editing editing() {
    return editing;
  }

  GearMetering gearMetering() {
    return gearMetering;
  }

  Recording recording() {
    return recording;
  }

  Proposing proposing() {
    return proposing;
  }

  Signing signing() {
    return signing;
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

  Suggesting suggesting() {
    return suggesting;
  }

  SearchNews searchNews() {
    return searchNews;
  }

  SearchKeeping searchKeeping() {
    return searchKeeping;
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

  TakingOut takingOut() {
    return takingOut;
  }

  Importing importing() {
    return importing;
  }

  IndexKeeping indexKeeping() {
    return indexKeeping;
  }

  /** For how long the search index may have lacked a change; zero where it lacks none. */
  Duration indexLag() {
    return follower.lag();
  }

  /** How many setups searches can find; NaN while the index cannot be asked. */
  double indexDocuments() {
    try {
      return index.count();
    } catch (IndexFailure e) {
      return Double.NaN;
    }
  }

  /** Up to where in the change log searches show what is there. */
  Bookmark indexPosition() {
    return follower.position();
  }

  /** The index that is being made anew. */
  Optional<IndexRebuild> rebuild() {
    return follower.rebuild();
  }

  /** Setups whose meaning is not worked out; NaN where this server does not know. */
  double meaningsOutstanding() {
    return meaningUpkeep.map(MeaningUpkeep::outstanding).orElse(Double.NaN);
  }

  /** Why a search might miss something now; empty where it does not. */
  Optional<String> trouble() {
    return switch (follower.state()) {
      case FollowerState.Ready ready -> Optional.empty();
      case FollowerState.Behind behind -> Optional.of("The search index is catching up. Wait.");
      case FollowerState.Rebuilding building ->
          Optional.of(
              "The search index is being built: %d of about %d setups. Wait."
                  .formatted(building.done(), building.total()));
      case FollowerState.Failed failed ->
          Optional.of(
              "The search index: " + failed.reason() + " It is tried again; the log says more.");
    };
  }

  @Override
  public void close() {
    finding.close();
    importing.close();
    signatures.close();
    pictures.close();
    meaningUpkeep.ifPresent(MeaningUpkeep::close);
    sentences.ifPresent(Sentences::close);
    follower.close();
    index.close();
  }
}
