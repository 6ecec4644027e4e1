package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Setups;
import lampwright.tasks.DemoStudio.Part;
import lampwright.wording.Wording;

/**
 * Brings the demo's files into its studio as an archive, by the task that every owner has. What is
 * there already, or has been, stays as it is; where it ends half-way, nothing has come in.
 */
public final class DemoLoader {

  private static final Duration BETWEEN_TWO_WORDS = Duration.ofSeconds(1);

  private final Database database;
  private final Importing importing;
  private final Clock clock;
  private final Path folder;
  private final DemoFiles files = new DemoFiles();

  /**
   * Reads what there is to be brought in.
   *
   * @param folder where the archive is put together; what is in it from before goes
   * @throws IllegalStateException where the program was packed without it
   */
  public DemoLoader(Database database, Importing importing, Clock clock, Path folder) {
    this.database = database;
    this.importing = importing;
    this.clock = clock;
    this.folder = folder;
  }

  /** What the studio is called. */
  public String studioName() {
    return files.studioName();
  }

  /**
   * Brings in what is not there yet.
   *
   * @param people who the files' people are
   * @param say takes a line for whoever waits, about once a second
   * @throws IllegalStateException where it cannot be brought in, with the reason
   */
  public void load(DemoStudio.People people, Part part, Consumer<String> say) {
    if (isThere(people.owner(), part)) {
      return;
    }
    List<AutoCloseable> afterwards = new ArrayList<>();
    try {
      Path spool = Spool.make(Spool.emptied(folder), afterwards);
      Importing.Told told = bringIn(people, archive(people, part, spool, say), say);
      // Another server on the same database may have brought it meanwhile.
      if (told.state() != Importing.State.IMPORTED && !isThere(people.owner(), part)) {
        throw new IllegalStateException(
            "The demo could not be brought in: %s %s"
                .formatted(told.trouble().map(DemoLoader::words).orElse(""), told.faults()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("The demo's archive could not be put together", e);
    } finally {
      Spool.closeAll(afterwards);
    }
  }

  /** For who runs the server. */
  private static String words(ImportTrouble trouble) {
    return new Wording(
            new Notation(
                PhraseFiles.read(Language.ENGLISH), LengthUnit.METRES, StopFraction.TENTHS))
        .say(trouble.said());
  }

  private boolean isThere(Caller owner, Part part) {
    List<String> names = part == Part.FEW ? files.few("setups") : files.names("setups");
    Set<SetupId> known =
        database.inStudio(DemoStudio.ID, owner.asker(), in -> new Setups(in).idsEver());
    return names.stream().map(DemoSetup::id).map(SetupId::new).allMatch(known::contains);
  }

  private Path archive(DemoStudio.People people, Part part, Path spool, Consumer<String> say)
      throws IOException {
    DemoArchive archive =
        new DemoArchive(files, people::key, Files.createDirectory(spool.resolve("parts")));
    if (part == Part.FEW) {
      archive.addFew();
    } else {
      archive.addAll();
    }
    Path file = spool.resolve("demo.zip");
    try (OutputStream out = Files.newOutputStream(file)) {
      archive.write(out, clock.instant());
    }
    say.accept(
        "The demo studio comes in: %d setups, %d pictures, %d takes and notes."
            .formatted(archive.setups(), archive.pictures(), archive.takesAndNotes()));
    return file;
  }

  private Importing.Told bringIn(DemoStudio.People people, Path file, Consumer<String> say)
      throws IOException {
    ImportJob job;
    try (InputStream in = Files.newInputStream(file)) {
      job = importing.accept(people.owner(), DemoStudio.ID, Importing.Clashes.KEEP, in);
    }
    await(job.checked(), job, say);
    if (job.told().state() == Importing.State.PLANNED) {
      importing.start(people.owner(), DemoStudio.ID, job.id());
      await(job.over(), job, say);
    }
    return job.told();
  }

  private static void await(CountDownLatch end, ImportJob job, Consumer<String> say) {
    try {
      while (!end.await(BETWEEN_TWO_WORDS.toMillis(), TimeUnit.MILLISECONDS)) {
        Importing.Told told = job.told();
        say.accept(
            "The demo studio: %s, %d of %d"
                .formatted(
                    told.state().name().toLowerCase(Locale.ROOT), told.done(), told.total()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The demo was interrupted before it was in", e);
    }
  }
}
