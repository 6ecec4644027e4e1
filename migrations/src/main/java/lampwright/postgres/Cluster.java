package lampwright.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;

/** The database files themselves: made once, with a random password kept beside them. */
final class Cluster {

  /** The account inside PostgreSQL that owns everything; the server never works as it. */
  static final String OWNER = "lampwright_owner";

  private static final FileAttribute<Set<PosixFilePermission>> OURS_ONLY =
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

  private final DataFolder folder;
  private final Binaries binaries;
  private final Account account;

  Cluster(DataFolder folder, Binaries binaries, Account account) {
    this.folder = folder;
    this.binaries = binaries;
    this.account = account;
  }

  /**
   * The owner's password of the cluster, which is made first where there is none.
   *
   * @throws DataFolderUnusable when the files are of another version, or their password is missing
   */
  String password() throws IOException {
    if (!Files.isDirectory(folder.cluster())) {
      return make();
    }
    String version =
        Files.readString(folder.cluster().resolve("PG_VERSION"), StandardCharsets.US_ASCII).strip();
    if (!version.equals(binaries.majorVersion())) {
      throw new DataFolderUnusable(
          "The data folder %s was made by PostgreSQL %s and this Lampwright brings PostgreSQL %s. Dump it with the Lampwright that made it and load the dump here, or choose another folder by LAMPWRIGHT_DATA."
              .formatted(folder.root(), version, binaries.majorVersion()));
    }
    if (!Files.isRegularFile(folder.passwordFile())) {
      throw new DataFolderUnusable(
          "The data folder %s has lost the file %s, without which its database cannot be opened. Put it back from the backup, or choose another folder by LAMPWRIGHT_DATA."
              .formatted(folder.root(), folder.passwordFile().getFileName()));
    }
    return Files.readString(folder.passwordFile(), StandardCharsets.US_ASCII).strip();
  }

  private String make() throws IOException {
    // Only a whole cluster gets the final name: what a killed start left is made anew.
    Path part = folder.postgres().resolve("cluster.part");
    Binaries.deleteTree(part);
    String password = newPassword();
    Path forInitdb = folder.postgres().resolve("initdb-password");
    Files.deleteIfExists(forInitdb);
    Files.createDirectory(
        part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    account.own(part);
    try {
      Files.createFile(forInitdb, OURS_ONLY);
      Files.writeString(forInitdb, password, StandardCharsets.US_ASCII);
      account.own(forInitdb);
      initialise(part, forInitdb);
    } finally {
      Files.deleteIfExists(forInitdb);
    }
    keep(password);
    Files.move(part, folder.cluster(), StandardCopyOption.ATOMIC_MOVE);
    return password;
  }

  private void initialise(Path part, Path passwordFile) throws IOException {
    Finished initdb =
        Finished.of(
            account.process(
                binaries.program("initdb"),
                "--pgdata=" + account.seen(part),
                "--username=" + OWNER,
                "--pwfile=" + account.seen(passwordFile),
                "--auth=scram-sha-256",
                "--encoding=UTF8",
                // Sorts alike on every machine, whatever its C library knows of languages.
                "--locale-provider=builtin",
                "--builtin-locale=C.UTF-8",
                "--locale=C",
                "--data-checksums"));
    if (initdb.output().contains("could not look up effective user ID")) {
      throw new DataFolderUnusable(
          "PostgreSQL cannot fill the data folder %s as a user whom /etc/passwd does not name. Start Lampwright as one whom it names, or give LAMPWRIGHT_DATABASE_URL a PostgreSQL of your own."
              .formatted(folder.root()));
    }
    if (!initdb.succeeded()) {
      throw DataFolder.unusable(folder.root(), Postmaster.reasonIn(initdb.output()));
    }
  }

  private void keep(String password) throws IOException {
    Path part = folder.root().resolve("postgres-password.part");
    Files.deleteIfExists(part);
    Files.createFile(part, OURS_ONLY);
    Files.writeString(
        part,
        password,
        StandardCharsets.US_ASCII,
        StandardOpenOption.WRITE,
        StandardOpenOption.SYNC);
    Files.move(
        part,
        folder.passwordFile(),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  private static String newPassword() {
    byte[] bytes = new byte[24];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }
}
