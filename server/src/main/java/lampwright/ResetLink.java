package lampwright;

import java.io.PrintStream;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.store.Database;
import lampwright.tasks.PasswordResetting;
import lampwright.tasks.Passwords;

/**
 * {@code java -jar lampwright.jar reset-link EMAIL}: makes the link by which somebody sets a new
 * password, in place of serving. For the server's keeper; the one way in for a sole owner who
 * forgot.
 */
final class ResetLink {

  static final String COMMAND = "reset-link";

  private ResetLink() {}

  /**
   * Says the link.
   *
   * @return whether somebody signs in by that address
   */
  static boolean make(Settings settings, String email, PrintStream console) {
    try (Foundation foundation = Foundation.lay(settings);
        Database database = new Database(foundation.database(), 1, Clock.systemUTC())) {
      Optional<PasswordResetting.Made> made =
          new PasswordResetting(database, new Ids(new SecureRandom()), new Passwords())
              .issueAsKeeper(email);
      console.println(
          made.map(
                  link ->
                      "This link sets a new password; it works once and until %s: %s/password-reset/%s"
                          .formatted(link.expiresAt(), address(settings), link.secret()))
              .orElse("Nobody signs in by that address. Look how it is written."));
      return made.isPresent();
    }
  }

  private static String address(Settings settings) {
    return settings
        .publicUrl()
        .map(url -> url.toString().replaceAll("/$", ""))
        .orElseGet(() -> "http://" + settings.host() + ":" + settings.port());
  }
}
