package lampwright.tasks;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.picture.CleanedFile;
import lampwright.picture.PictureFormat;
import lampwright.picture.PictureSize;
import lampwright.setup.PictureId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.KeptFile;
import lampwright.store.PictureFiles;
import lampwright.store.PicturesUnavailable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Gives out the bytes of pictures. */
public final class PictureGiving {

  /** The version that is given out where the file itself cannot be cleaned. */
  static final String DOWNLOAD = "download";

  private static final Logger LOG = LoggerFactory.getLogger(PictureGiving.class);

  private final SetupPictures pictures;
  private final PictureFiles files;

  public PictureGiving(Database database, PictureFiles files) {
    this.pictures = new SetupPictures(database);
    this.files = files;
  }

  /** The name that the store knows a size by. */
  static String name(PictureSize size) {
    return size.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Where the files of a picture are. */
  public Whereabouts whereabouts(KeptPicture picture) {
    return whereabouts(picture.sha256());
  }

  /** The same by the hash of the file. */
  public Whereabouts whereabouts(String sha256) {
    try {
      return files.recall(sha256, PictureFiles.ORIGINAL).isPresent()
          ? Whereabouts.THERE
          : Whereabouts.LOST;
    } catch (PicturesUnavailable e) {
      return Whereabouts.AWAY;
    }
  }

  /** Where the files of a picture may be. */
  public enum Whereabouts {
    /** Where they belong. */
    THERE,
    /** In a store that does not answer now. */
    AWAY,
    /** Nowhere. */
    LOST
  }

  /** Whoever opens a part of the bytes. */
  private interface Opening {
    InputStream open(long first, long count) throws IOException;
  }

  /**
   * Bytes to give out.
   *
   * @param opening opens a part of them
   * @param length how many there are
   * @param version names these bytes; others have another
   * @param sha256 of them, where that is known
   * @param ending of a file name for them, without the dot
   */
  public record Given(
      Opening opening,
      long length,
      String mediaType,
      String version,
      Optional<String> sha256,
      String ending) {

    /**
     * Opens so many of them from one on, counted from 0.
     *
     * @throws Refused NotFound where their file is lost
     */
    public InputStream open(long first, long count) {
      try {
        return opening.open(first, count);
      } catch (FileNotFoundException | NoSuchFileException e) {
        LOG.error("A picture's file is lost: {}", version);
        throw Refused.notFound();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A smaller version, a JPEG. */
  public Given size(Caller caller, StudioId studio, SetupId setup, PictureId id, PictureSize size) {
    return version(pictures.get(caller, studio, setup, id), name(size), PictureFormat.JPEG);
  }

  /** The same of a picture that was found otherwise, such as by a link. */
  public Given size(KeptPicture picture, PictureSize size) {
    return version(picture, name(size), PictureFormat.JPEG);
  }

  /** The file as it came; where its place may not be shown, without what tells of it. */
  public Given original(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    KeptPicture picture = pictures.get(caller, studio, setup, id);
    if (picture.note().mayShowPlace()) {
      return version(picture, PictureFiles.ORIGINAL, picture.format());
    }
    return picture.format() == PictureFormat.TIFF
        ? version(picture, DOWNLOAD, PictureFormat.JPEG)
        : cleaned(picture);
  }

  private Given version(KeptPicture picture, String name, PictureFormat format) {
    boolean isOriginal = name.equals(PictureFiles.ORIGINAL);
    KeptFile file = file(picture, name);
    return new Given(
        file::open,
        file.bytes(),
        format.mediaType(),
        isOriginal ? picture.sha256() : picture.sha256() + "-" + name,
        isOriginal ? Optional.of(picture.sha256()) : Optional.empty(),
        format.ending());
  }

  private Given cleaned(KeptPicture picture) {
    try {
      Pieces pieces = new Pieces(CleanedFile.of(file(picture, PictureFiles.ORIGINAL).map()));
      return new Given(
          pieces::part,
          pieces.bytes(),
          picture.format().mediaType(),
          picture.sha256() + "-cleaned",
          Optional.empty(),
          picture.format().ending());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private KeptFile file(KeptPicture picture, String name) {
    return files
        .recall(picture.sha256(), name)
        .orElseThrow(
            () -> {
              LOG.error("A picture's file is lost: {}.{}", picture.sha256(), name);
              return Refused.notFound();
            });
  }
}
