package lampwright;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import lampwright.people.Seal;

/**
 * The file of the key under which second factors are sealed: 64 hexadecimal digits. The one in the
 * data folder is made at the first start and only its owner may read it; one that a setting names
 * must be there, since a new one in its place would open nothing.
 */
final class SealingKeyFile {

  static final String NAME = "sealing.key";

  private static final String ONLY_ITS_OWNER = "rw-------";

  private SealingKeyFile() {}

  /** Where it lies. */
  static Path path(Settings settings) {
    return settings.sealingKey().orElseGet(() -> settings.data().resolve(NAME));
  }

  /**
   * Reads the key, and makes one where there is none in the data folder.
   *
   * @throws SettingRefused where the file cannot be read or written, or holds no key
   */
  static Seal open(Settings settings, SecureRandom random) {
    Path file = path(settings);
    try {
      if (settings.sealingKey().isEmpty() && Files.notExists(file)) {
        make(file, random);
      }
      return Seal.of(read(file), random);
    } catch (IOException e) {
      throw SettingRefused.of(
          Setting.SEALING_KEY,
          file.toString(),
          "cannot be read or written (%s). Give it to the server's user."
              .formatted(e.getClass().getSimpleName()));
    }
  }

  private static byte[] read(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.ISO_8859_1).strip();
    if (!text.matches("[0-9a-fA-F]{" + 2 * Seal.KEY_BYTES + "}")) {
      throw SettingRefused.of(
          Setting.SEALING_KEY,
          file.toString(),
          "must hold 64 hexadecimal digits. Bring the file back from a backup.");
    }
    return HexFormat.of().parseHex(text);
  }

  /** It appears whole or not at all. */
  private static void make(Path file, SecureRandom random) throws IOException {
    byte[] key = new byte[Seal.KEY_BYTES];
    random.nextBytes(key);
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path half =
        Files.createTempFile(
            folder,
            NAME,
            ".new",
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(ONLY_ITS_OWNER)));
    Files.writeString(half, HexFormat.of().formatHex(key) + "\n");
    Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
  }
}
