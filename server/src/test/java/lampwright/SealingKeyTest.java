package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import lampwright.people.Seal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * The key that second factors are sealed under lies in a file of the server's, not in the database.
 */
class SealingKeyTest {

  private static final String SECRET = "5eed".repeat(10);
  private static final String OF_TOVE =
      " from lampwright.second_factor where person_id = 'tove0000'";

  @RegisterExtension static final TestHouse house = TestHouse.with(Map.of());

  @TempDir private Path folder = Path.of("");

  private static Path file() {
    return house.data().resolve(SealingKeyFile.NAME);
  }

  /** As a server kept it that had no key. */
  private static void keepInTheOpen() throws Exception {
    house
        .database()
        .sqlAsSuperuser(
            "insert into lampwright.person (id, email, name, password_hash, created_at)"
                + " values ('tove0000', 'tove@light.example', 'Tove', 'x', now())",
            "insert into lampwright.second_factor (person_id, secret, created_at, confirmed_at)"
                + " values ('tove0000', decode('%s', 'hex'), now(), now())".formatted(SECRET));
  }

  private static List<String> kept() throws Exception {
    return house.database().sqlAsSuperuser("select encode(secret, 'hex')" + OF_TOVE);
  }

  @Test
  void whatLayOpenIsSealedAtTheStartAndAWrongKeyIsToldAndLosesNothing() throws Exception {
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
    String key = Files.readString(file());
    assertTrue(key.matches("[0-9a-f]{64}\n"), "a key of 256 bits");
    keepInTheOpen();
    assertEquals(List.of(SECRET), kept());
    house.reopen();
    List<String> sealed = kept();
    assertEquals(List.of("48"), house.database().sqlAsSuperuser("select length(secret)" + OF_TOVE));
    assertFalse(sealed.toString().contains(SECRET));
    assertEquals(key, Files.readString(file()), "it is made once");
    Files.delete(file());
    house.reopen();
    String told = house.console();
    assertTrue(told.contains("sealed under another key than that of " + file() + ": 1."), told);
    assertEquals(sealed, kept(), "nothing is lost");
    Files.writeString(file(), key);
    house.reopen();
    assertEquals(told, house.console().substring(0, told.length()));
    assertFalse(house.console().substring(told.length()).contains("another key"));
  }

  private Seal open(String key) {
    Settings settings =
        Settings.read(
            Map.of(
                "LAMPWRIGHT_DATA",
                folder.resolve("data").toString(),
                "LAMPWRIGHT_SEALING_KEY",
                key));
    return SealingKeyFile.open(settings, new SecureRandom());
  }

  @Test
  void serversOnOneDatabaseCanShareOneFile() throws IOException {
    Path shared = folder.resolve("shared.key");
    Files.writeString(shared, "0A".repeat(32) + "\n");
    assertEquals(open(shared.toString()).name(), open(shared.toString()).name());
    assertFalse(Files.exists(folder.resolve("data")), "no other is made");
  }

  @Test
  void aFileThatIsNamedAndHoldsNoKeyStopsTheStart() throws IOException {
    Path none = folder.resolve("none.key");
    String missing =
        String.valueOf(
            assertThrows(SettingRefused.class, () -> open(none.toString())).getMessage());
    assertTrue(missing.startsWith("LAMPWRIGHT_SEALING_KEY (" + none + ") cannot be read"), missing);
    Files.writeString(none, "0a0b");
    String faulty =
        String.valueOf(
            assertThrows(SettingRefused.class, () -> open(none.toString())).getMessage());
    assertTrue(faulty.contains("must hold 64 hexadecimal digits"), faulty);
    assertFalse(faulty.contains("0a0b"), "what might be a key is not told");
  }
}
