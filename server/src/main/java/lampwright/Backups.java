package lampwright;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.backup.BackupFile;
import lampwright.backup.BackupRefused;
import lampwright.backup.BackupWriter;
import lampwright.backup.Manifest;
import lampwright.backup.Progress;
import lampwright.backup.Restoring;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.postgres.RunningPostgres;
import lampwright.schema.OwnedDatabase;
import lampwright.schema.Snapshot;
import lampwright.schema.WorkingDatabase;
import lampwright.store.PictureSource;

/**
 * {@code java -jar lampwright.jar backup FILE-OR-FOLDER}, {@code check-backup FILE} and {@code
 * restore FILE}: what the server's keeper keeps it by, in place of serving. A backup is made beside
 * a server that works; it is restored where there is nothing yet.
 */
final class Backups {

  private static final String BACKUP = "backup";
  private static final String CHECK = "check-backup";
  private static final String RESTORE = "restore";

  private final Settings settings;
  private final PrintStream console;

  private Backups(Settings settings, PrintStream console) {
    this.settings = settings;
    this.console = console;
  }

  static boolean knows(String command) {
    return Set.of(BACKUP, CHECK, RESTORE).contains(command);
  }

  /**
   * Does what one of the commands says.
   *
   * @return whether the backup is whole: false where pictures had been lost before it was made
   * @throws BackupRefused where it cannot be done; nothing is left of it then
   */
  static boolean run(Settings settings, String command, String file, PrintStream console) {
    Backups backups = new Backups(settings, console);
    return switch (command) {
      case BACKUP -> backups.make(path(file), Clock.systemUTC().instant());
      case CHECK -> backups.check(path(file));
      case RESTORE -> backups.restore(path(file));
      default -> throw new IllegalArgumentException("Ask first which commands there are");
    };
  }

  private static Path path(String file) {
    try {
      return Path.of(file).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw new BackupRefused(
          "%s is no name that a file can have here. Give it another.".formatted(file));
    }
  }

  private boolean make(Path wanted, Instant now) {
    Instant madeAt = now.truncatedTo(ChronoUnit.SECONDS);
    Path target =
        Files.isDirectory(wanted)
            ? wanted.resolve("lampwright-" + madeAt.toString().replace(":", "") + ".zip")
            : wanted;
    if (Files.exists(target)) {
      throw new BackupRefused(
          "There is a file %s already, and it stays. Give the backup another name."
              .formatted(target));
    }
    // Interrupted, it leaves nothing; killed, it leaves a name that says it is not whole.
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> BackupWriter.forgetUnfinished(target), "lampwright-unfinished-backup"));
    Manifest made = inDatabase(database -> write(database, target, madeAt));
    console.println(
        "Backed up, as of %s: %s, in %s. Hashes of passwords are in it: keep it where nobody else reads it."
            .formatted(madeAt, contents(made), target));
    return nothingWasLost(made);
  }

  private Manifest write(OwnedDatabase database, Path target, Instant madeAt) {
    try (Snapshot snapshot = database.snapshot();
        PictureSource pictures = settings.pictures().of(snapshot.identity()).read()) {
      return BackupWriter.write(
          target,
          snapshot,
          pictures,
          Optional.ofNullable(Lampwright.class.getPackage().getImplementationVersion())
              .orElse("development"),
          madeAt,
          new Progress(console));
    }
  }

  /** In the database that there is, beside the server where one works. */
  private <T> T inDatabase(Function<OwnedDatabase, T> work) {
    Optional<OwnedDatabase> named = named();
    if (named.isPresent()) {
      return work.apply(named.get());
    }
    if (!RunningPostgres.hasDatabase(settings.data())) {
      throw new BackupRefused(
          "The data folder %s has no database in it. Name the server's own by LAMPWRIGHT_DATA."
              .formatted(settings.data()));
    }
    Optional<RunningPostgres> running = RunningPostgres.find(settings.data());
    if (running.isPresent()) {
      return work.apply(OwnedDatabase.in(running.get()));
    }
    try (EmbeddedPostgres own = EmbeddedPostgres.start(settings.data())) {
      return work.apply(OwnedDatabase.in(own));
    }
  }

  private Optional<OwnedDatabase> named() {
    return settings
        .databaseOwner()
        .map(url -> OwnedDatabase.at(WorkingDatabase.OWNER_URL_SETTING, url))
        .or(
            () ->
                settings.database().map(url -> OwnedDatabase.at(WorkingDatabase.URL_SETTING, url)));
  }

  private boolean check(Path file) {
    try (BackupFile backup = BackupFile.open(file)) {
      backup.verify(new Progress(console));
      console.println(
          "The backup of %s is whole: %s."
              .formatted(backup.manifest().madeAt(), contents(backup.manifest())));
      return nothingWasLost(backup.manifest());
    }
  }

  private boolean restore(Path file) {
    try (BackupFile backup = BackupFile.open(file)) {
      Optional<OwnedDatabase> named = named();
      if (named.isPresent()) {
        restore(backup, named.get());
      } else {
        try (EmbeddedPostgres own = EmbeddedPostgres.start(settings.data())) {
          restore(backup, OwnedDatabase.in(own));
        }
      }
      console.println(
          "Restored as of %s: %s. The search index builds itself when the server starts."
              .formatted(backup.manifest().madeAt(), contents(backup.manifest())));
      askForTheKey(backup.manifest());
      return nothingWasLost(backup.manifest());
    }
  }

  /** It is kept apart from every backup, and a start without it makes another. */
  private void askForTheKey(Manifest manifest) {
    Path key = SealingKeyFile.path(settings);
    boolean isNeeded =
        manifest.tables().stream()
            .anyMatch(rows -> rows.table().name().equals("second_factor") && rows.count() > 0);
    if (isNeeded && Files.notExists(key)) {
      console.println(
          "Second factors in it are sealed under a key that no backup holds. Put the old server's at %s before this one starts; without it people get in by their recovery codes only."
              .formatted(key));
    }
  }

  private void restore(BackupFile backup, OwnedDatabase database) {
    Restoring.restore(backup, database, settings.pictures(), new Progress(console));
  }

  private static String contents(Manifest manifest) {
    return "%d rows of %d tables, %s"
        .formatted(
            manifest.rows(),
            manifest.tables().size(),
            manifest.pictures() == 1 ? "1 picture" : manifest.pictures() + " pictures");
  }

  private boolean nothingWasLost(Manifest manifest) {
    if (manifest.lost().isEmpty()) {
      return true;
    }
    console.println(
        "The files of %d pictures were missing when it was made, so they are not in it. Look for an older backup that has them; the first is %s."
            .formatted(manifest.lost().size(), manifest.lost().getFirst()));
    return false;
  }
}
