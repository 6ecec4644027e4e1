package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.foreign.Arena;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import lampwright.document.Json;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.picture.CleanedFile;
import lampwright.picture.Picture;
import lampwright.picture.PictureFormat;
import lampwright.picture.PictureReader;
import lampwright.picture.PictureReading;
import lampwright.picture.PictureSize;
import lampwright.picture.Unusable;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Page;
import lampwright.store.PictureFiles;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the pictures of setups. Files go to their place before the row that names them, and away
 * after it, so that no crash leaves a row without its file; {@link #sweep} takes away what one left
 * without a row. In between, nobody may find a file unneeded that a row is about to name: hence the
 * lock, which who adds pictures shares and who takes a file away holds alone.
 */
public final class PictureKeeping {

  /** The most bytes of one file. */
  public static final long MOST_BYTES = 64L << 20;

  private static final int MOST_PICTURES = 500;
  private static final String DOWNLOAD = "download";
  private static final Duration WAIT_FOR_DECODER = Duration.ofSeconds(20);
  private static final Logger LOG = LoggerFactory.getLogger(PictureKeeping.class);

  private final Database database;
  private final PictureFiles files;
  private final Ids ids;

  /**
   * Decoding one large picture can take a few hundred megabytes; two at a time could be too much.
   */
  private final Semaphore decoder = new Semaphore(1);

  private final ReentrantReadWriteLock placing = new ReentrantReadWriteLock();

  public PictureKeeping(Database database, PictureFiles files, Ids ids) {
    this.database = database;
    this.files = files;
    this.ids = ids;
  }

  /**
   * The picture that an address names.
   *
   * @throws Refused NotFound where no picture can have that id
   */
  public static PictureId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new PictureId(text);
  }

  /** Takes away what a crash left without a row. Only before anybody can add pictures. */
  public void sweep() {
    Set<String> needed = database.asIndexer(Pictures::hashes);
    for (String hash : files.hashes()) {
      if (!needed.contains(hash)) {
        files.delete(hash);
      }
    }
    long missing =
        needed.stream().filter(hash -> files.find(hash, PictureFiles.ORIGINAL).isEmpty()).count();
    if (missing > 0) {
      LOG.error("{} pictures have lost their files; bring the folder back from a backup", missing);
    }
  }

  /** A file that came in and is not kept yet; to be closed. */
  public static final class Received implements AutoCloseable {

    private final PictureFiles.Arrival arrival;

    private Received(PictureFiles.Arrival arrival) {
      this.arrival = arrival;
    }

    @Override
    public void close() {
      arrival.close();
    }
  }

  /**
   * Whether a member may add any picture to a setup; asked before its bytes are taken in.
   *
   * @throws Refused NotAllowed, NotFound
   */
  public void askToAdd(Caller caller, StudioId studio, SetupId setup) {
    askToAdd(caller, studio, setup, PictureKind.CONTACT_FRAME);
  }

  private void askToAdd(Caller caller, StudioId studio, SetupId setup, PictureKind kind) {
    inSetup(caller, studio, setup, in -> mayAdd(in, kind));
  }

  private static Role mayAdd(StudioTransaction in, PictureKind kind) {
    Role role = Leave.ask(in, Permission.READ_SETUPS);
    Permission needed = kind.isOfTheDay() ? Permission.LOG_TAKES : Permission.WRITE_SETUPS;
    if (!role.may(needed)) {
      throw Refused.notAllowed(
          "Your role here is %s, and only %s. An owner of the studio can change your role."
              .formatted(
                  role.word(),
                  role.may(Permission.LOG_TAKES)
                      ? "authors and owners add and change pictures of the kind " + kind.word()
                      : "crew, authors and owners add pictures"));
    }
    return role;
  }

  /**
   * Takes a file's bytes in, piece by piece.
   *
   * @throws Refused TooLarge beyond {@link #MOST_BYTES}, NotReadable where they end too early
   */
  public Received receive(InputStream in) {
    try {
      return files
          .receive(in, MOST_BYTES)
          .map(Received::new)
          .orElseThrow(() -> new Refused(new Refusal.TooLarge(MOST_BYTES)));
    } catch (IOException e) {
      throw Refused.notReadable("The picture ended before it was complete. Send it again.");
    }
  }

  /**
   * Reads a file that came in and keeps it.
   *
   * @throws Refused Invalid where it is no picture that can be used, with the reason
   */
  public KeptPicture keep(
      Caller caller, StudioId studio, SetupId setup, Received received, PictureNote note) {
    askToAdd(caller, studio, setup, note.kind());
    PictureFiles.Arrival arrival = received.arrival;
    Picture picture = read(arrival.file());
    try {
      return placed(caller, studio, setup, arrival, picture, note);
    } catch (RuntimeException e) {
      takeAwayUnneeded(arrival.sha256());
      throw e;
    }
  }

  private KeptPicture placed(
      Caller caller,
      StudioId studio,
      SetupId setup,
      PictureFiles.Arrival arrival,
      Picture picture,
      PictureNote note) {
    placing.readLock().lock();
    try {
      place(arrival, picture);
      return inSetup(
          caller,
          studio,
          setup,
          in -> {
            mayAdd(in, note.kind());
            Pictures pictures = new Pictures(in);
            if (pictures.count(setup) >= MOST_PICTURES) {
              throw new Refused(
                  new Refusal.Clash(
                      "The setup has " + MOST_PICTURES + " pictures already. Delete one first."));
            }
            return kept(
                in,
                pictures.create(
                    new PictureId(ids.next()),
                    setup,
                    note.kind().word(),
                    StoredDocuments.print(PictureNote.FORM, note),
                    stored(arrival, picture)));
          });
    } finally {
      placing.readLock().unlock();
    }
  }

  private static StoredPicture.File stored(PictureFiles.Arrival arrival, Picture picture) {
    return new StoredPicture.File(
        arrival.sha256(),
        arrival.bytes(),
        picture.format().mediaType(),
        picture.width(),
        picture.height(),
        PictureFacts.print(picture.exif()),
        PictureFacts.print(picture.statistics()));
  }

  private <T> T inSetup(
      Caller caller, StudioId studio, SetupId setup, Function<StudioTransaction, T> work) {
    return database.inStudio(
        studio,
        caller.person().id(),
        in -> {
          Sight.ask(in).get(in, setup);
          return work.apply(in);
        });
  }

  private Picture read(Path file) {
    if (!isDecoderFree()) {
      throw Refused.unavailable(Duration.ofSeconds(5));
    }
    try {
      return switch (mapped(file, PictureReader::read)) {
        case Picture picture -> picture;
        case Unusable unusable -> throw Refused.invalid("", unusable.sentence());
      };
    } finally {
      decoder.release();
    }
  }

  private boolean isDecoderFree() {
    try {
      return decoder.tryAcquire(WAIT_FOR_DECODER.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** The file's bytes where the system keeps them, not in our memory. */
  private static PictureReading mapped(Path file, Function<ByteBuffer, PictureReading> work) {
    try (Arena arena = Arena.ofConfined();
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return work.apply(
          channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size(), arena).asByteBuffer());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The original last: what has one is complete. */
  private void place(PictureFiles.Arrival arrival, Picture picture) {
    picture.sizes().forEach((size, jpeg) -> files.put(arrival.sha256(), name(size), jpeg));
    picture.download().ifPresent(jpeg -> files.put(arrival.sha256(), DOWNLOAD, jpeg));
    files.put(arrival);
  }

  private static String name(PictureSize size) {
    return size.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private void takeAwayUnneeded(String sha256) {
    placing.writeLock().lock();
    try {
      if (!database.asIndexer(in -> Pictures.isNeeded(in, sha256))) {
        files.delete(sha256);
      }
    } finally {
      placing.writeLock().unlock();
    }
  }

  /** A picture as it is now. */
  public KeptPicture get(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    return inSetup(caller, studio, setup, in -> get(in, setup, id));
  }

  private static KeptPicture get(StudioTransaction in, SetupId setup, PictureId id) {
    return kept(in, new Pictures(in).find(setup, id).orElseThrow(Refused::notFound));
  }

  /**
   * Part of a setup's pictures, the last changed first.
   *
   * @param next a cursor for the next part
   */
  public record Listed(List<KeptPicture> items, int total, Optional<String> next) {}

  /**
   * Some pictures of a setup.
   *
   * @param cursor where the part before ended
   * @throws Refused Invalid at {@code /cursor} for one that was not made here
   */
  public Listed list(
      Caller caller, StudioId studio, SetupId setup, Optional<String> cursor, int limit) {
    Optional<Page.Place> after = PageCursor.read(cursor);
    return inSetup(
        caller,
        studio,
        setup,
        in -> {
          Pictures pictures = new Pictures(in);
          Page<StoredPicture> page = pictures.list(setup, after, limit);
          return new Listed(
              page.items().stream().map(stored -> kept(in, stored)).toList(),
              pictures.count(setup),
              page.next().map(PageCursor::write));
        });
  }

  /** Puts another note in the place of the one that it was made from. */
  public KeptPicture replace(
      Caller caller,
      StudioId studio,
      SetupId setup,
      PictureId id,
      Optional<Integer> basedOn,
      PictureNote note) {
    return inSetup(
        caller,
        studio,
        setup,
        in -> {
          KeptPicture current = get(in, setup, id);
          Leave.ask(in, Permission.WRITE_SETUPS);
          Cataloguing.mustBeSaved(
              new Pictures(in)
                  .replace(
                      id,
                      basedOn.orElse(current.revision()),
                      note.kind().word(),
                      StoredDocuments.print(PictureNote.FORM, note)));
          return get(in, setup, id);
        });
  }

  /** Takes a picture away, and its file where no other picture is the same. */
  public void delete(
      Caller caller, StudioId studio, SetupId setup, PictureId id, Optional<Integer> basedOn) {
    String sha256 =
        inSetup(
            caller,
            studio,
            setup,
            in -> {
              KeptPicture current = get(in, setup, id);
              Leave.ask(in, Permission.WRITE_SETUPS);
              Cataloguing.mustBeSaved(
                  new Pictures(in).delete(id, basedOn.orElse(current.revision())));
              return current.sha256();
            });
    takeAwayUnneeded(sha256);
  }

  /**
   * Bytes to give out.
   *
   * @param version names these bytes; others have another
   * @param ending of a file name for them, without the dot
   */
  public record Given(InputStream bytes, String mediaType, String version, String ending) {}

  /** A smaller version, a JPEG. */
  public Given size(Caller caller, StudioId studio, SetupId setup, PictureId id, PictureSize size) {
    KeptPicture picture = get(caller, studio, setup, id);
    return new Given(
        open(picture, name(size)),
        PictureFormat.JPEG.mediaType(),
        picture.sha256() + "-" + name(size),
        PictureFormat.JPEG.ending());
  }

  /** The file as it came; where its place may not be shown, without what tells of it. */
  public Given original(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    KeptPicture picture = get(caller, studio, setup, id);
    PictureFormat format = picture.format();
    if (picture.note().mayShowPlace()) {
      return new Given(
          open(picture, PictureFiles.ORIGINAL),
          format.mediaType(),
          picture.sha256(),
          format.ending());
    }
    if (format == PictureFormat.TIFF) {
      return new Given(
          open(picture, DOWNLOAD),
          PictureFormat.JPEG.mediaType(),
          picture.sha256() + "-" + DOWNLOAD,
          PictureFormat.JPEG.ending());
    }
    return new Given(
        cleaned(picture), format.mediaType(), picture.sha256() + "-cleaned", format.ending());
  }

  private InputStream open(KeptPicture picture, String name) {
    try {
      return Files.newInputStream(file(picture, name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private InputStream cleaned(KeptPicture picture) {
    try (FileChannel channel =
        FileChannel.open(file(picture, PictureFiles.ORIGINAL), StandardOpenOption.READ)) {
      return new Pieces(
          CleanedFile.of(channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path file(KeptPicture picture, String name) {
    return files.find(picture.sha256(), name).orElseThrow(Refused::notFound);
  }

  private static KeptPicture kept(StudioTransaction in, StoredPicture stored) {
    StoredPicture.File file = stored.file();
    return new KeptPicture(
        stored.id(),
        stored.setup(),
        stored.revision(),
        stored.changedAt(),
        Cataloguing.name(in, stored.changedBy()),
        StoredDocuments.read(PictureNote.FORM, stored.document()),
        PictureFormat.find(file.mediaType()).orElseThrow(),
        file.sha256(),
        file.bytes(),
        file.width(),
        file.height(),
        PictureFacts.read(file.facts()),
        Json.parse(file.statistics()));
  }
}
