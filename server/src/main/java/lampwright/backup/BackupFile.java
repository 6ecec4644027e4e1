package lampwright.backup;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.Enumeration;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * A backup as it is read: nothing in it is believed before its checksum was found right. It lies in
 * the order tables, pictures, checksums, manifest, and is read in that order.
 */
public final class BackupFile implements AutoCloseable {

  private static final String NO_BACKUP =
      "%s is no backup of Lampwright, or ended before it was complete. Take another file.";

  private static final int LARGEST_MANIFEST = 64 << 20;
  private static final int PIECE = 256 * 1024;

  private final Path file;
  private final ZipFile zip;
  private final Manifest manifest;

  private BackupFile(Path file, ZipFile zip, Manifest manifest) {
    this.file = file;
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens it and reads what it says it is.
   *
   * @throws BackupRefused where it is no backup, or not whole
   */
  public static BackupFile open(Path file) {
    ZipFile zip;
    try {
      zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
    } catch (NoSuchFileException e) {
      throw new BackupRefused(
          "There is no file %s. Correct its name, or its path.".formatted(file), e);
    } catch (ZipException e) {
      throw noBackup(file, e);
    } catch (IOException | IllegalArgumentException e) {
      throw new BackupRefused(
          "%s cannot be read (%s). Correct its name, or let this user read it."
              .formatted(file, e.getMessage()),
          e);
    }
    try {
      return new BackupFile(file, zip, readManifest(file, zip));
    } catch (RuntimeException e) {
      close(zip, e);
      throw e;
    }
  }

  private static BackupRefused noBackup(Path file, Throwable cause) {
    return new BackupRefused(NO_BACKUP.formatted(file), cause);
  }

  private static Manifest readManifest(Path file, ZipFile zip) {
    ZipEntry entry = zip.getEntry(Entries.MANIFEST);
    if (entry == null) {
      throw new BackupRefused(NO_BACKUP.formatted(file));
    }
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] text = in.readNBytes(LARGEST_MANIFEST);
      CRC32 sum = new CRC32();
      sum.update(text);
      if (sum.getValue() != entry.getCrc() || text.length != entry.getSize()) {
        throw BackupRefused.spoilt(file, "its manifest is not what was written");
      }
      return Manifest.parse(new String(text, StandardCharsets.UTF_8))
          .orElseThrow(
              () ->
                  new BackupRefused(
                      "%s is no backup that this Lampwright reads. Take the Lampwright that made it, or a newer one."
                          .formatted(file)));
    } catch (IOException e) {
      throw BackupRefused.spoilt(file, "its manifest cannot be read");
    }
  }

  /** What it says it is. */
  public Manifest manifest() {
    return manifest;
  }

  /** Where it lies. */
  Path path() {
    return file;
  }

  /** What is done with each file in it; it need not read the stream to its end. */
  interface EachFile {

    void rows(Manifest.Rows table, InputStream in) throws IOException;

    void picture(Entries.PictureVersion version, InputStream in) throws IOException;
  }

  /**
   * Reads all of it and holds every file in it against its checksum.
   *
   * @throws BackupRefused where one is not what was written, or the files are not those that the
   *     manifest tells of
   */
  public void verify(Progress progress) {
    long all = manifest.tables().size() + manifest.pictureFiles();
    forEach(
        new EachFile() {
          private long done;

          @Override
          public void rows(Manifest.Rows table, InputStream in) {
            tell();
          }

          @Override
          public void picture(Entries.PictureVersion version, InputStream in) {
            tell();
          }

          private void tell() {
            done++;
            progress.tell(() -> "Checked: %d of %d files.".formatted(done, all));
          }
        });
  }

  /** Hands on each file, and holds it against its checksum when it was read. */
  void forEach(EachFile each) {
    try {
      readEach(each);
    } catch (ZipException e) {
      throw BackupRefused.spoilt(file, "a file in it cannot be unpacked");
    } catch (Unreadable e) {
      throw BackupRefused.spoilt(file, "a file in it ends too early");
    } catch (IOException e) {
      throw BackupRefused.spoilt(file, "it cannot be read to its end");
    }
  }

  private void readEach(EachFile each) throws IOException {
    MessageDigest ofChecksums = Entries.sha256();
    try (BufferedReader checksums =
        new BufferedReader(
            new InputStreamReader(
                new DigestInputStream(open(named(Entries.CHECKSUMS)), ofChecksums),
                StandardCharsets.US_ASCII))) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      for (Manifest.Rows table : manifest.tables()) {
        String name = Entries.rows(table.table().name());
        read(name, next(entries), checksums, in -> each.rows(table, in));
      }
      for (long i = 0; i < manifest.pictureFiles(); i++) {
        ZipEntry entry = next(entries);
        Entries.PictureVersion version =
            Entries.findPicture(entry.getName())
                .orElseThrow(
                    () -> BackupRefused.spoilt(file, "a file in it should be a picture's"));
        read(entry.getName(), entry, checksums, in -> each.picture(version, in));
      }
      if (checksums.readLine() != null
          || !next(entries).getName().equals(Entries.CHECKSUMS)
          || !next(entries).getName().equals(Entries.MANIFEST)
          || entries.hasMoreElements()) {
        throw BackupRefused.spoilt(file, "its files are not those that its manifest tells of");
      }
    }
    if (!Entries.hex(ofChecksums).equals(manifest.checksums())) {
      throw BackupRefused.spoilt(file, "its list of checksums is not what was written");
    }
  }

  private interface Reading {
    void read(InputStream in) throws IOException;
  }

  private void read(String name, ZipEntry entry, BufferedReader checksums, Reading reading)
      throws IOException {
    Entries.Checksum wanted =
        Entries.findChecksum(String.valueOf(checksums.readLine()))
            .filter(line -> line.entry().equals(name) && entry.getName().equals(name))
            .orElseThrow(
                () ->
                    BackupRefused.spoilt(
                        file, "its files are not those that its manifest tells of"));
    MessageDigest digest = Entries.sha256();
    try (InputStream in = new DigestInputStream(open(entry), digest)) {
      reading.read(in);
      byte[] rest = new byte[PIECE];
      while (in.read(rest) >= 0) {
        // What was not used counts too.
      }
    }
    if (!Entries.hex(digest).equals(wanted.sha256())) {
      throw BackupRefused.spoilt(file, name + " is not what was written");
    }
  }

  private ZipEntry next(Enumeration<? extends ZipEntry> entries) {
    if (!entries.hasMoreElements()) {
      throw BackupRefused.spoilt(file, "files are missing in it");
    }
    return entries.nextElement();
  }

  private ZipEntry named(String name) {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw BackupRefused.spoilt(file, name + " is missing in it");
    }
    return entry;
  }

  /** What can be wrong with reading is told apart from what can be wrong with writing. */
  private InputStream open(ZipEntry entry) throws IOException {
    InputStream in = zip.getInputStream(entry);
    if (in == null) {
      throw new Unreadable(new IOException(entry.getName()));
    }
    return new SpoiltStream(in);
  }

  /** A part of the backup cannot be read. */
  static final class Unreadable extends IOException {
    private static final long serialVersionUID = 1L;

    Unreadable(Throwable cause) {
      super(cause);
    }
  }

  /** The hashes of pictures that had no file when it was made. */
  List<String> lost() {
    return manifest.lost();
  }

  private static void close(ZipFile zip, Throwable reason) {
    try {
      zip.close();
    } catch (IOException e) {
      reason.addSuppressed(e);
    }
  }

  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException e) {
      // It was only read.
    }
  }
}
