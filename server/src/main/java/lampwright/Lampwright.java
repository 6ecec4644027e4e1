package lampwright;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import lampwright.backup.BackupRefused;
import lampwright.postgres.DataFolderUnusable;
import lampwright.schema.DatabaseRefused;
import lampwright.search.IndexFailure;
import lampwright.store.PicturesUnavailable;
import lampwright.web.http.AddressUnusable;
import lampwright.web.http.CertificateUnusable;
import org.slf4j.LoggerFactory;

/** Starts the server: reads the settings, lays the foundation, opens the house. */
public final class Lampwright {

  private static final int REFUSED = 2;
  private static final int FAILED = 1;

  private Lampwright() {}

  /**
   * Serves until it is told to stop, or does what {@link IndexCheck#COMMAND} or {@link
   * SecondFactorOff#COMMAND} or {@link ResetLink#COMMAND} or {@link Backups} say. What cannot be
   * worked with is said in one line.
   */
  public static void main(String[] arguments) throws InterruptedException {
    try {
      switch (List.of(arguments)) {
        case List<String> none when none.isEmpty() -> start(Settings.read(System.getenv()));
        case List<String> check when check.equals(List.of(IndexCheck.COMMAND)) ->
            System.exit(IndexCheck.run(Settings.read(System.getenv()), System.out) ? 0 : FAILED);
        case List<String> off
            when off.size() == 2 && off.getFirst().equals(SecondFactorOff.COMMAND) ->
            System.exit(
                SecondFactorOff.run(Settings.read(System.getenv()), off.getLast(), System.out)
                    ? 0
                    : FAILED);
        case List<String> reset
            when reset.size() == 2 && reset.getFirst().equals(ResetLink.COMMAND) ->
            System.exit(
                ResetLink.make(Settings.read(System.getenv()), reset.getLast(), System.out)
                    ? 0
                    : FAILED);
        case List<String> kept when kept.size() == 2 && Backups.knows(kept.getFirst()) ->
            System.exit(
                Backups.run(
                        Settings.read(System.getenv()), kept.getFirst(), kept.getLast(), System.out)
                    ? 0
                    : FAILED);
        default -> {
          System.err.println(
              "Lampwright serves where nothing follows its name; check-index compares its index"
                  + " with the database; second-factor-off EMAIL lets a person in by the password"
                  + " alone; reset-link EMAIL makes a link for a new password; backup FILE or"
                  + " FOLDER writes all of it down; check-backup FILE proves such a file; restore"
                  + " FILE brings it into an empty data folder or database.");
          System.exit(REFUSED);
        }
      }
    } catch (SettingRefused
        | DataFolderUnusable
        | DatabaseRefused
        | AddressUnusable
        | CertificateUnusable
        | BackupRefused
        | PicturesUnavailable
        | IndexFailure.InUse e) {
      System.err.println(e.getMessage());
      System.exit(REFUSED);
    } catch (RuntimeException e) {
      LoggerFactory.getLogger(Lampwright.class).error("Could not start", e);
      System.exit(FAILED);
    }
    // The threads that serve do not keep the process alive; this one does.
    new CountDownLatch(1).await();
  }

  private static void start(Settings settings) {
    Foundation foundation = Foundation.lay(settings);
    House house;
    try {
      if (settings.demo() == Demo.REMOVED) {
        System.out.println(
            "The demo studio is not here any more: %d setups went."
                .formatted(foundation.removeDemo(settings)));
      }
      house = House.open(settings, foundation.database(), Clock.systemUTC(), System.out);
    } catch (RuntimeException | Error e) {
      foundation.close();
      throw e;
    }
    Runtime.getRuntime()
        .addShutdownHook(new Thread(() -> stop(house, foundation), "lampwright-stop"));
  }

  private static void stop(House house, Foundation foundation) {
    int code = 0;
    try (foundation;
        house) {
      // Closed in order: the house, then what it stands on.
    } catch (RuntimeException e) {
      LoggerFactory.getLogger(Lampwright.class).error("Could not stop in order", e);
      code = FAILED;
    }
    // Being told to stop is no failure, and the virtual machine would say 143.
    Runtime.getRuntime().halt(code);
  }
}
