package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The command by which the server's keeper lets a sole owner in again who forgot the password. */
class ResetLinkTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private final ByteArrayOutputStream console = new ByteArrayOutputStream();

  private boolean make(String email) {
    return ResetLink.make(
        Settings.read(
            Map.of(
                "LAMPWRIGHT_DATABASE_URL",
                house.database().ownerUrl(),
                "LAMPWRIGHT_PUBLIC_URL",
                "https://lights.example/")),
        email,
        new PrintStream(console, true, StandardCharsets.UTF_8));
  }

  private String said() {
    return console.toString(StandardCharsets.UTF_8);
  }

  @Test
  void theKeeperMakesALinkForASoleOwnerThatWorksOnce() {
    assertTrue(make(" Owner@demo.example "), said());
    Matcher link =
        Pattern.compile(" https://lights\\.example(/password-reset/\\S+)\\R").matcher(said());
    assertTrue(link.find(), said());
    String form = "password=seven+sandbags&password_again=seven+sandbags";
    assertEquals(200, house.visitor().postForm(link.group(1), form).statusCode());
    assertEquals(201, house.signIn("owner@demo.example", "seven sandbags").statusCode());
    assertEquals(404, house.visitor().postForm(link.group(1), form).statusCode());
  }

  @Test
  void whoIsNotThereGetsNoLink() {
    assertFalse(make("nobody@demo.example"), said());
    assertEquals("Nobody signs in by that address. Look how it is written.", said().strip());
  }
}
