package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.picture.CleanedFile;
import lampwright.picture.PictureFormat;
import lampwright.picture.PictureSize;
import lampwright.setup.PictureId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.PictureFiles;
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

  /** Whether the files of a picture are where they belong. */
  public boolean isThere(KeptPicture picture) {
    return isThere(picture.sha256());
  }

  /** The same by the hash of the file. */
  public boolean isThere(String sha256) {
    return files.find(sha256, PictureFiles.ORIGINAL).isPresent();
  }

  /**
   * Bytes to give out.
   *
   * @param length how many there are
   * @param version names these bytes; others have another
   * @param sha256 of them, where that is known
   * @param ending of a file name for them, without the dot
   */
  public record Given(
      InputStream bytes,
      long length,
      String mediaType,
      String version,
      Optional<String> sha256,
      String ending) {}

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
    Path file = file(picture, name);
    try {
      return new Given(
          Files.newInputStream(file),
          Files.size(file),
          format.mediaType(),
          isOriginal ? picture.sha256() : picture.sha256() + "-" + name,
          isOriginal ? Optional.of(picture.sha256()) : Optional.empty(),
          format.ending());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Given cleaned(KeptPicture picture) {
    try (FileChannel channel =
        FileChannel.open(file(picture, PictureFiles.ORIGINAL), StandardOpenOption.READ)) {
      Pieces pieces =
          new Pieces(CleanedFile.of(channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size())));
      return new Given(
          pieces,
          pieces.bytes(),
          picture.format().mediaType(),
          picture.sha256() + "-cleaned",
          Optional.empty(),
          picture.format().ending());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path file(KeptPicture picture, String name) {
    return files
        .find(picture.sha256(), name)
        .orElseThrow(
            () -> {
              LOG.error("A picture's file is lost: {}.{}", picture.sha256(), name);
              return Refused.notFound();
            });
  }
}
