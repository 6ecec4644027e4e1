package lampwright.tasks;

import java.util.List;
import java.util.stream.Stream;
import lampwright.search.Bookmark;
import lampwright.search.Change;
import lampwright.search.ChangeSource;
import lampwright.search.IndexEntry;
import lampwright.store.ChangeLog;
import lampwright.store.Database;
import lampwright.store.IndexerTransaction;
import lampwright.store.SetupChange;

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
        log.streamSetups().flatMap(setup -> IndexedSetup.find(setup).stream()).onClose(in::close);
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
        .flatMap(IndexedSetup::find)
        .<Change>map(entry -> new Change.Kept(bookmark(change.at()), entry))
        .orElseGet(
            () ->
                new Change.Gone(
                    bookmark(change.at()),
                    change.studio().text(),
                    change.setup().text(),
                    change.revision()));
  }
}
