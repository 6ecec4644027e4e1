package lampwright;

import java.io.PrintStream;
import java.time.Clock;
import lampwright.store.Database;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SecondFactorKeeping;

/**
 * {@code java -jar lampwright.jar second-factor-off EMAIL}: for the keeper of the server, in place
 * of serving, where somebody has lost their device and their recovery codes. It signs them out
 * everywhere; their password alone lets them in again. Where the database is the server's own, the
 * server of that folder must be stopped.
 */
final class SecondFactorOff {

  static final String COMMAND = "second-factor-off";

  private static final int CONNECTIONS = 1;

  private SecondFactorOff() {}

  /**
   * Switches it off.
   *
   * @return whether somebody signs in by that address
   */
  static boolean run(Settings settings, String email, PrintStream console) {
    try (Foundation foundation = Foundation.lay(settings);
        Database database = new Database(foundation.database(), CONNECTIONS, Clock.systemUTC())) {
      boolean was = SecondFactorKeeping.switchOffFor(database, email);
      console.println(
          was
              ? "The second factor is off, and they are signed out everywhere. The password alone"
                  + " lets them in."
              : "There was no second factor. They are signed out everywhere.");
      return true;
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.NotFound) {
        console.println("Nobody signs in here by that e-mail. Check how it is written.");
        return false;
      }
      throw refused;
    }
  }
}
