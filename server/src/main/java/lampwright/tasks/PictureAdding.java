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
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.picture.Picture;
import lampwright.picture.PictureExamination;
import lampwright.picture.PictureReader;
import lampwright.picture.ToneStatistics;
import lampwright.picture.Unusable;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.PictureFiles;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes new pictures of setups in: bytes to a file, the file to facts, both to a row. */
public final class PictureAdding {

  /** The most bytes of one file. */
  public static final long MOST_BYTES = 64L << 20;

  private static final Duration WAIT_FOR_DECODER = Duration.ofSeconds(20);
  private static final Duration RETRY = Duration.ofSeconds(5);

  private static final Logger LOG = LoggerFactory.getLogger(PictureAdding.class);

  private final SetupPictures pictures;
  private final PictureFiles files;
  private final PictureUpkeep upkeep;
  private final Ids ids;

  /**
   * Decoding one large picture can take a few hundred megabytes; two at a time could be too much.
   */
  private final Turns decoder = new Turns(1, WAIT_FOR_DECODER, RETRY);

  public PictureAdding(Database database, PictureFiles files, PictureUpkeep upkeep, Ids ids) {
    this.pictures = new SetupPictures(database);
    this.files = files;
    this.upkeep = upkeep;
    this.ids = ids;
  }

  /** A file that came in and is not kept yet; to be closed. */
  public static final class Received implements AutoCloseable {

    private final PictureFiles.Arrival arrival;

    private Received(PictureFiles.Arrival arrival) {
      this.arrival = arrival;
    }

    /** The hash of its bytes, 64 small hexadecimal digits. */
    public String sha256() {
      return arrival.sha256();
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
    pictures.in(caller, studio, setup, in -> mayAdd(in, kind));
  }

  /** The kinds of picture that a member may add to a setup; none for who may not. */
  public List<PictureKind> kinds(Caller caller, StudioId studio, SetupId setup) {
    return pictures.in(
        caller,
        studio,
        setup,
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          return Arrays.stream(PictureKind.values())
              .filter(kind -> role.may(needed(kind)))
              .toList();
        });
  }

  private static Permission needed(PictureKind kind) {
    return kind.isOfTheDay() ? Permission.LOG_TAKES : Permission.WRITE_SETUPS;
  }

  private static Role mayAdd(StudioTransaction in, PictureKind kind) {
    Role role = Leave.ask(in, Permission.READ_SETUPS);
    if (!role.may(needed(kind))) {
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
      Caller caller,
      StudioId studio,
      SetupId setup,
      Received received,
      PictureNote note,
      Once once) {
    askToAdd(caller, studio, setup, note.kind());
    PictureFiles.Arrival arrival = received.arrival;
    Picture picture = read(arrival.file());
    try {
      if (files.isDistant()) {
        place(arrival, picture);
      }
      return pictures.in(
          caller,
          studio,
          setup,
          in -> {
            mayAdd(in, note.kind());
            return SetupPictures.kept(
                in,
                once.make(
                    in,
                    ids,
                    id -> placed(in, setup, new PictureId(id), arrival, picture, note),
                    id -> new Pictures(in).find(setup, new PictureId(id))));
          });
    } catch (RuntimeException e) {
      forget(arrival.sha256(), e);
      throw e;
    }
  }

  /**
   * Reads the tones of a file that came in, of which nothing is kept.
   *
   * @throws Refused Invalid where it is no picture that can be used, with the reason
   */
  ToneStatistics tones(Received received) {
    return read(received.arrival.file()).statistics();
  }

  /** What was placed for a row that did not come about. */
  private void forget(String sha256, RuntimeException reason) {
    try {
      upkeep.takeAwayUnneeded(sha256);
    } catch (RuntimeException e) {
      // The next start takes it away; what is wrong now is the reason before.
      reason.addSuppressed(e);
    }
  }

  private StoredPicture placed(
      StudioTransaction in,
      SetupId setup,
      PictureId id,
      PictureFiles.Arrival arrival,
      Picture picture,
      PictureNote note) {
    Pictures stored = new Pictures(in);
    if (stored.count(setup) >= PictureNote.MOST_OF_A_SETUP) {
      throw new Refused(
          new Refusal.Clash(
              "The setup has "
                  + PictureNote.MOST_OF_A_SETUP
                  + " pictures already. Delete one first."));
    }
    stored.holdFile(arrival.sha256());
    place(arrival, picture);
    return stored.create(
        id,
        setup,
        note.kind().word(),
        StoredDocuments.print(PictureNote.FORM, note),
        stored(arrival, picture));
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

  private Picture read(Path file) {
    try (var _ = decoder.take()) {
      return switch (mapped(file, PictureReader::read)) {
        case Picture picture -> picture;
        case Unusable unusable -> throw Refused.invalid("", unusable.sentence());
      };
    } catch (OutOfMemoryError e) {
      // One picture at a time is decoded, and what it took is free again here.
      LOG.warn("A picture of {} bytes needs more memory than this server has", size(file));
      throw Refused.invalid(
          "", "The picture needs more memory than this server has. Send a smaller version.");
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a file is; waits until the decoder is free. */
  PictureExamination examineInTurn(Path file) {
    return inTurn(file, PictureReader::examine);
  }

  private <T> T inTurn(Path file, Function<ByteBuffer, T> work) {
    try (var _ = decoder.takeInTheEnd()) {
      return mapped(file, work);
    }
  }

  /**
   * Puts a file that was read before into its place, without a row: whoever does this holds it.
   *
   * @throws IOException where it cannot be written
   */
  StoredPicture.File placeHeld(InputStream in) throws IOException {
    try (PictureFiles.Arrival arrival =
        files.receive(in, MOST_BYTES).orElseThrow(() -> new IOException("Larger than it was"))) {
      return switch (inTurn(arrival.file(), PictureReader::read)) {
        case Unusable _ -> throw new IOException("A picture is no longer what it was");
        case Picture picture -> {
          place(arrival, picture);
          yield stored(arrival, picture);
        }
      };
    }
  }

  /** The file's bytes where the system keeps them, not in our memory. */
  private static <T> T mapped(Path file, Function<ByteBuffer, T> work) {
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
    picture
        .sizes()
        .forEach((size, jpeg) -> files.put(arrival.sha256(), PictureGiving.name(size), jpeg));
    picture.download().ifPresent(jpeg -> files.put(arrival.sha256(), PictureGiving.DOWNLOAD, jpeg));
    files.put(arrival);
  }
}
