package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.StudioId;
import lampwright.search.Bookmark;
import lampwright.search.Change;
import lampwright.search.ChangeSource;
import lampwright.search.IndexEntry;
import lampwright.setup.BuildStep;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.Outcome;
import lampwright.setup.SetupDocument;
import lampwright.setup.Standing;
import lampwright.setup.Subject;
import lampwright.store.ChangeLog;
import lampwright.store.Database;
import lampwright.store.IndexerTransaction;
import lampwright.store.SetupChange;
import lampwright.store.StoredSetup;

/** The database as the search index follows it: every studio's setups, and what changed. */
public final class IndexedStudios implements ChangeSource {

  private final Database database;

  public IndexedStudios(Database database) {
    this.database = database;
  }

  /** Names the database that an index is a copy of. */
  public String identity() {
    return database.asIndexer(in -> new ChangeLog(in).catalogueIdentity());
  }

  @Override
  public List<Change> after(Bookmark bookmark, int limit) {
    lampwright.store.Bookmark from =
        new lampwright.store.Bookmark(bookmark.transactionId(), bookmark.seq());
    return database.asIndexer(
        in -> {
          ChangeLog log = new ChangeLog(in);
          if (!log.reaches(from)) {
            throw new LogGap("The change log does not hold " + bookmark + ".");
          }
          return log.setupChangesAfter(from, limit).stream().map(IndexedStudios::change).toList();
        });
  }

  @Override
  public Everything everything() {
    IndexerTransaction in = database.beginAsIndexer();
    ChangeLog log = new ChangeLog(in);
    Stream<IndexEntry> entries =
        log.streamSetups()
            .flatMap(setup -> entry(setup.studio(), setup.setup()).stream())
            .onClose(in::close);
    return new Everything(bookmark(log.newestBookmark()), log.countSetups(), entries);
  }

  private static Bookmark bookmark(lampwright.store.Bookmark at) {
    return new Bookmark(at.transactionId(), at.seq());
  }

  private static Change change(SetupChange change) {
    // What is there again under the same id has lines of its own further on.
    boolean isErased = change.revision() == Change.ERASED;
    return change
        .now()
        .filter(_ -> !isErased)
        .flatMap(setup -> entry(change.studio(), setup))
        .<Change>map(entry -> new Change.Kept(bookmark(change.at()), entry))
        .orElseGet(
            () ->
                new Change.Gone(
                    bookmark(change.at()),
                    change.studio().text(),
                    change.setup().text(),
                    change.revision()));
  }

  /** One document that cannot be read must not keep all others from being found. */
  private static Optional<IndexEntry> entry(StudioId studio, StoredSetup stored) {
    return StoredDocuments.find(SetupDocument.FORM, stored.document(), stored.id())
        .map(setup -> entry(studio, stored, setup));
  }

  private static IndexEntry entry(StudioId studio, StoredSetup stored, SetupDocument setup) {
    IndexEntry.Builder entry =
        IndexEntry.of(studio.text(), stored.id().text(), stored.revision(), setup.title())
            .changedAt(stored.changedAt())
            .intent(setup.intent().orElse(""))
            .moods(setup.moods())
            .written(written(setup))
            .gear(gear(setup))
            .roles(setup.lights().stream().map(light -> light.role().name()).distinct().toList())
            .lightCount(setup.lights().size())
            .standing(
                stored.standing().state().word(),
                stored.standing().archived(),
                stored.standing().equals(Standing.PROVEN));
    setup.genre().ifPresent(entry::genre);
    Optional<Occasion.Place> place = setup.occasion().flatMap(Occasion::place);
    place.map(Occasion.Place::name).ifPresent(entry::placeName);
    place.flatMap(Occasion.Place::kind).ifPresent(entry::placeKind);
    return entry.build();
  }

  private static List<String> written(SetupDocument setup) {
    List<String> texts = new ArrayList<>();
    setup.lights().forEach(light -> light.reason().ifPresent(texts::add));
    setup.buildOrder().stream().map(BuildStep::what).flatMap(Optional::stream).forEach(texts::add);
    setup.outcome().stream().map(Outcome::text).forEach(texts::add);
    texts.addAll(setup.retouchNotes());
    setup.occasion().flatMap(Occasion::weather).ifPresent(texts::add);
    for (Subject subject : setup.subjects()) {
      texts.add(subject.name());
      subject.path().forEach(mark -> mark.cue().ifPresent(texts::add));
    }
    return texts;
  }

  private static List<String> gear(SetupDocument setup) {
    List<String> names = new ArrayList<>();
    for (Light light : setup.lights()) {
      names.add(light.head().name());
      light.modifier().ifPresent(modifier -> names.add(modifier.name()));
      light.gels().forEach(gel -> names.add(gel.name()));
    }
    setup.camera().flatMap(lampwright.setup.Camera::body).ifPresent(body -> names.add(body.name()));
    setup.camera().flatMap(lampwright.setup.Camera::lens).ifPresent(lens -> names.add(lens.name()));
    return names.stream().distinct().toList();
  }
}
