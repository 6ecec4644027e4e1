package lampwright.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may do what, and what names them. */
class RoleTest {

  private static List<Permission> permissionsOf(Role role) {
    return Stream.of(Permission.values()).filter(role::may).toList();
  }

  @Test
  void eachRoleMayWhatTheNextOneMayAndMore() {
    assertEquals(List.of(Permission.values()), permissionsOf(Role.OWNER));
    assertEquals(
        List.of(
            Permission.READ_SETUPS,
            Permission.READ_DRAFTS,
            Permission.LOG_TAKES,
            Permission.WRITE_SETUPS,
            Permission.WRITE_KITS,
            Permission.WRITE_TRAILS,
            Permission.SIGN_OFF,
            Permission.SHARE_SETUPS),
        permissionsOf(Role.AUTHOR));
    assertEquals(
        List.of(Permission.READ_SETUPS, Permission.READ_DRAFTS, Permission.LOG_TAKES),
        permissionsOf(Role.CREW));
    assertEquals(List.of(Permission.READ_SETUPS), permissionsOf(Role.READER));
  }

  @Test
  void theTableForDevelopersSaysWhatTheCodeSays() throws IOException {
    List<String> written =
        Files.readAllLines(Path.of("..", "DEVELOPERS.md")).stream()
            .filter(line -> line.startsWith("| `"))
            .filter(line -> Stream.of(Permission.values()).anyMatch(one -> isOf(one, line)))
            .map(line -> line.substring(0, line.lastIndexOf('|', line.length() - 2) + 1))
            .toList();
    assertEquals(
        Stream.of(Permission.values())
            .map(
                permission ->
                    "| `"
                        + permission
                        + "` | "
                        + Stream.of(Role.values())
                            .map(role -> role.may(permission) ? "yes" : "–")
                            .collect(Collectors.joining(" | "))
                        + " |")
            .toList(),
        written);
  }

  private static boolean isOf(Permission permission, String line) {
    return line.startsWith("| `" + permission + "` |");
  }

  @Test
  void everyRoleIsReadFromItsWord() {
    for (Role role : Role.values()) {
      assertEquals(role, Role.of(role.word()));
    }
    assertThrows(IllegalArgumentException.class, () -> Role.of("OWNER"));
  }

  @Test
  void idsAreShortAndNeverTheSame() {
    Ids ids = new Ids(new SecureRandom());
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 10_000; i++) {
      String id = ids.next();
      assertTrue(id.matches("[0-9a-hjkmnp-tv-z]{16}"), id);
      assertTrue(seen.add(id), id);
    }
    assertEquals("demo", new StudioId("demo").text());
    for (String wrong : List.of("abc", "Demo", "a-b-c", "'; --", "a".repeat(33), "dämo")) {
      assertThrows(IllegalArgumentException.class, () -> new StudioId(wrong), wrong);
    }
  }

  @Test
  void aSecretMatchesItsOwnHashOnly() {
    Ids ids = new Ids(new SecureRandom());
    String secret = ids.nextSecret();
    assertTrue(SecretHash.of(secret).matches(secret));
    assertFalse(SecretHash.of(secret).matches(ids.nextSecret()));
    assertEquals(SecretHash.of(secret), SecretHash.of(SecretHash.of(secret).bytes()));
    assertEquals(43, secret.length());
  }
}
