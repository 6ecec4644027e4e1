package lampwright.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lampwright.schema.Snapshot;
import lampwright.schema.TableShape;
import lampwright.store.KeptFile;
import lampwright.store.PictureFiles;
import lampwright.store.PictureSource;
import lampwright.store.PicturesUnavailable;

/**
 * Writes a backup: beside its name first, under its name only when all of it is on the disk. One
 * file of the ZIP is in memory by pieces; of each that is done, about 300 bytes stay for the ZIP's
 * directory.
 */
public final class BackupWriter {

  private static final int PIECE = 256 * 1024;
  private static final String UNFINISHED = ".part";

  private final Snapshot snapshot;
  private final PictureSource pictures;
  private final Progress progress;
  private final ZipOutputStream zip;
  private final OutputStream checksums;
  private final LocalDateTime at;
  private final List<String> lost = new ArrayList<>();
  private long pictureCount;
  private long pictureFiles;

  private BackupWriter(
      Snapshot snapshot,
      PictureSource pictures,
      Progress progress,
      ZipOutputStream zip,
      OutputStream checksums,
      Instant madeAt) {
    this.snapshot = snapshot;
    this.pictures = pictures;
    this.progress = progress;
    this.zip = zip;
    this.checksums = checksums;
    this.at = LocalDateTime.ofInstant(madeAt, ZoneOffset.UTC);
  }

  /** Takes away what there is of a backup that is not whole. */
  public static void forgetUnfinished(Path target) {
    forget(unfinished(target));
    forget(unfinishedChecksums(target));
  }

  /** The name that a backup has until it is whole. */
  private static Path unfinished(Path target) {
    return target.resolveSibling(target.getFileName() + UNFINISHED);
  }

  private static Path unfinishedChecksums(Path target) {
    return target.resolveSibling(target.getFileName() + ".checksums" + UNFINISHED);
  }

  /**
   * Writes it, for its maker's eyes only.
   *
   * @param target a name that nothing has yet
   * @param pictures of this database
   * @param madeBy the version of this program
   * @throws BackupRefused where the file cannot be written; nothing is left of it
   */
  public static Manifest write(
      Path target,
      Snapshot snapshot,
      PictureSource pictures,
      String madeBy,
      Instant madeAt,
      Progress progress) {
    Path part = unfinished(target);
    Path checksums = unfinishedChecksums(target);
    try {
      Files.deleteIfExists(part);
      Files.deleteIfExists(checksums);
      Manifest manifest;
      try (FileChannel file = create(part);
          FileChannel list = create(checksums);
          OutputStream lines = buffered(list);
          ZipOutputStream zip = new ZipOutputStream(buffered(file), StandardCharsets.UTF_8)) {
        manifest =
            new BackupWriter(snapshot, pictures, progress, zip, lines, madeAt)
                .write(checksums, madeBy, madeAt);
        zip.finish();
        zip.flush();
        file.force(true);
      }
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
      bringNamesToDisk(target);
      return manifest;
    } catch (PicturesUnavailable e) {
      throw BackupRefused.withoutPictures(e);
    } catch (IOException e) {
      throw BackupRefused.unwritable(target, e);
    } finally {
      forgetUnfinished(target);
    }
  }

  private Manifest write(Path checksumFile, String madeBy, Instant madeAt) throws IOException {
    List<Manifest.Rows> tables = new ArrayList<>();
    List<TableShape> all = snapshot.tables();
    for (TableShape table : all) {
      tables.add(new Manifest.Rows(table, writeRows(table)));
      progress.tell(() -> "Rows: %d of %d tables.".formatted(tables.size(), all.size()));
    }
    long total = snapshot.countPictures();
    // What a camera has packed does not become smaller.
    zip.setLevel(Deflater.NO_COMPRESSION);
    snapshot.forEachPicture(
        sha256 -> {
          writePicture(sha256);
          progress.tell(() -> "Pictures: %d of %d.".formatted(pictureCount + lost.size(), total));
        });
    zip.setLevel(Deflater.DEFAULT_COMPRESSION);
    checksums.flush();
    MessageDigest ofChecksums = Entries.sha256();
    begin(Entries.CHECKSUMS);
    Files.copy(checksumFile, new DigestOutputStream(zip, ofChecksums));
    zip.closeEntry();
    Manifest manifest =
        new Manifest(
            madeBy,
            snapshot.version(),
            madeAt,
            tables,
            pictureCount,
            pictureFiles,
            lost,
            Entries.hex(ofChecksums));
    begin(Entries.MANIFEST);
    zip.write(manifest.toJson().getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
    return manifest;
  }

  private long writeRows(TableShape table) throws IOException {
    String name = Entries.rows(table.name());
    MessageDigest digest = Entries.sha256();
    begin(name);
    long rows = snapshot.copy(table, new DigestOutputStream(zip, digest));
    end(name, digest);
    return rows;
  }

  private void writePicture(String sha256) throws IOException {
    List<KeptFile> versions = pictures.versions(sha256);
    if (versions.isEmpty() || !versions.getLast().name().equals(PictureFiles.ORIGINAL)) {
      lost.add(sha256);
      return;
    }
    for (KeptFile version : versions) {
      String name = Entries.picture(new Entries.PictureVersion(sha256, version.name()));
      MessageDigest digest = Entries.sha256();
      begin(name);
      try (InputStream in = version.open()) {
        in.transferTo(new DigestOutputStream(zip, digest));
      }
      end(name, digest);
      pictureFiles++;
    }
    pictureCount++;
  }

  private void begin(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(at);
    zip.putNextEntry(entry);
  }

  private void end(String name, MessageDigest digest) throws IOException {
    zip.closeEntry();
    checksums.write(
        new Entries.Checksum(Entries.hex(digest), name).line().getBytes(StandardCharsets.US_ASCII));
  }

  private static OutputStream buffered(FileChannel file) {
    return new BufferedOutputStream(Channels.newOutputStream(file), PIECE);
  }

  /** Hashes of passwords are in it, so it is nobody else's to read. */
  private static FileChannel create(Path file) throws IOException {
    FileAttribute<?>[] oursOnly =
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    return FileChannel.open(
        file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), oursOnly);
  }

  private static void bringNamesToDisk(Path target) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder != null) {
      try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
        names.force(true);
      }
    }
  }

  private static void forget(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // It keeps the name of what is not finished, and the next backup of that name takes it away.
    }
  }
}
