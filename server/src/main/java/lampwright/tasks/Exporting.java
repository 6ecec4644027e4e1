package lampwright.tasks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import lampwright.archive.ArchiveKind;
import lampwright.archive.BagWriter;
import lampwright.archive.LinesFile;
import lampwright.archive.PayloadFile;
import lampwright.archive.Summary;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.FormerName;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.store.ArchivedAuthors;
import lampwright.store.ArchivedRows;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.KeptFile;
import lampwright.store.SetupHistory;
import lampwright.store.StudioTransaction;

/**
 * Takes a studio, or one setup, out as an archive. The rows are read at one moment into files of
 * their own, so that nobody who downloads slowly holds a connection of the database; the pictures
 * are given out from where they lie, and stay there until that is over.
 */
public final class Exporting {

  private static final int AT_ONCE = 4;
  private static final Duration NEXT = Duration.ofSeconds(20);

  private final Database database;
  private final PictureUpkeep pictures;
  private final Path folder;
  private final Turns turns = new Turns(AT_ONCE, Duration.ZERO, NEXT);

  /**
   * @param folder for the rows while they are given out; what is in it from before goes
   */
  public Exporting(Database database, PictureUpkeep pictures, Path folder) {
    this.database = database;
    this.pictures = pictures;
    this.folder = Spool.emptied(folder);
  }

  /** An archive that is ready to be given out; to be closed. */
  public static final class Ready implements AutoCloseable {

    private final BagWriter.About about;
    private final List<PayloadFile> payload;
    private final List<AutoCloseable> afterwards;

    private Ready(
        BagWriter.About about, List<PayloadFile> payload, List<AutoCloseable> afterwards) {
      this.about = about;
      this.payload = payload;
      this.afterwards = afterwards;
    }

    /** A name for the file, without an ending. */
    public String name() {
      return about.base();
    }

    /**
     * Writes it all.
     *
     * @throws IOException where whoever it is for has gone
     */
    public void write(OutputStream out) throws IOException {
      BagWriter.write(out, about, payload);
    }

    @Override
    public void close() {
      Spool.closeAll(afterwards);
    }
  }

  /**
   * The whole studio.
   *
   * @throws Refused Unavailable where many are given out already
   */
  public Ready studio(Caller caller, StudioId studio) {
    return ready(
        caller,
        studio,
        "studio-" + studio.text(),
        in -> {
          Leave.ask(in, Permission.MOVE_STUDIO);
          return ArchivedRows.ofStudio(in);
        },
        studio.text());
  }

  /**
   * One setup with its history, its pictures, takes, notes and the locations that it named; a
   * deleted one too.
   *
   * @throws Refused NotFound where there never was such a setup to be seen
   */
  public Ready setup(Caller caller, StudioId studio, SetupId setup) {
    return ready(
        caller,
        studio,
        "setup-" + setup.text(),
        in -> {
          Histories.sight(in, setup);
          Leave.ask(in, Permission.WRITE_SETUPS);
          if (new SetupHistory(in).findCurrent(setup).isEmpty()) {
            throw Refused.notFound();
          }
          return ArchivedRows.ofSetup(in, setup);
        },
        setup.text());
  }

  private Ready ready(
      Caller caller,
      StudioId studio,
      String base,
      Function<StudioTransaction, ArchivedRows> asked,
      String subject) {
    List<AutoCloseable> afterwards = new ArrayList<>();
    boolean isReady = false;
    try {
      database.inStudio(studio, caller.asker(), asked);
      takePlace(afterwards);
      Path spool = Spool.make(folder, afterwards);
      Ready ready =
          database.inStudioAtOneMoment(
              studio,
              caller.asker(),
              in -> {
                AuditTrail.note(in, AuditAction.TAKEN_OUT, AuditKind.ARCHIVE, subject, base);
                return read(in, asked.apply(in), base, new Spooling(spool, afterwards));
              });
      isReady = true;
      return ready;
    } finally {
      if (!isReady) {
        Spool.closeAll(afterwards);
      }
    }
  }

  private void takePlace(List<AutoCloseable> afterwards) {
    afterwards.add(turns.take());
  }

  private record Spooling(Path folder, List<AutoCloseable> afterwards) {}

  private Ready read(StudioTransaction in, ArchivedRows rows, String base, Spooling spooling) {
    List<PayloadFile> payload = new ArrayList<>();
    List<Summary.Count> counts = new ArrayList<>();
    Set<String> authors = new TreeSet<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      counts.add(spool(rows, kind, spooling.folder(), payload, authors));
    }
    Set<String> hashes = rows.pictureHashes();
    spooling.afterwards().add(pictures.hold(hashes));
    List<String> missing = new ArrayList<>();
    Map<String, KeptFile> files = pictures.originals(hashes);
    for (String hash : hashes) {
      Optional.ofNullable(files.get(hash))
          .ifPresentOrElse(
              file -> payload.add(PayloadFile.ofPicture(hash, file.bytes(), file::open)),
              () -> missing.add(hash));
    }
    Summary summary =
        new Summary(
            rows.isWhole() ? Summary.What.STUDIO : Summary.What.SETUP,
            counts,
            named(in, authors),
            rows.parent().map(List::of).orElse(List.of()),
            missing);
    payload.add(LinesFile.ofSummary(summary, spooling.folder()));
    return new Ready(
        new BagWriter.About(base, rows.studioName(), in.now()), payload, spooling.afterwards());
  }

  private static Summary.Count spool(
      ArchivedRows rows,
      ArchiveKind kind,
      Path folder,
      List<PayloadFile> payload,
      Set<String> authors) {
    try (LinesFile things = LinesFile.ofThings(kind, folder);
        LinesFile versions = LinesFile.ofVersions(kind, folder)) {
      rows.eachThing(
          kind,
          thing -> {
            authors.add(thing.createdBy());
            things.add(kind.things().write(thing));
          });
      rows.eachVersion(
          kind,
          version -> {
            authors.add(version.changedBy());
            versions.add(kind.versions().write(version));
          });
      payload.add(things.finish());
      payload.add(versions.finish());
      return new Summary.Count(kind, things.lines(), versions.lines());
    }
  }

  /** As the histories show them: who has left is not named. */
  private static List<Summary.Author> named(StudioTransaction in, Set<String> keys) {
    Map<PersonId, String> names = Cataloguing.names(in);
    ArchivedAuthors archived = new ArchivedAuthors(in);
    Map<PersonId, String> archivedNames = archived.names();
    Map<String, String> byKey = new HashMap<>();
    archived.keys().forEach((id, key) -> byKey.put(key, archivedNames.get(id)));
    return keys.stream()
        .map(
            key ->
                new Summary.Author(
                    key,
                    Optional.ofNullable(names.get(new PersonId(key)))
                        .or(() -> Optional.ofNullable(byKey.get(key)))
                        .orElse(FormerName.UNNAMED)))
        .toList();
  }
}
