package lampwright;

import java.io.PrintStream;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import lampwright.search.Follower;
import lampwright.search.IndexComparison;
import lampwright.search.SetupIndex;
import lampwright.store.Database;
import lampwright.tasks.IndexedStudios;

/**
 * {@code java -jar lampwright.jar check-index}: proves that the index in the data folder equals the
 * database, in place of serving. The server of that folder must be stopped; servers of other
 * folders on the same database may go on.
 */
final class IndexCheck {

  static final String COMMAND = "check-index";

  private static final Duration PATIENCE = Duration.ofMinutes(30);
  private static final int NAMED = 20;

  /** Others may write while this compares; what differs only for that is the same the next time. */
  private static final int TIMES = 3;

  private IndexCheck() {}

  /**
   * Brings the index level with the change log as a start does, and compares every setup.
   *
   * @return whether they are equal
   * @throws lampwright.search.IndexFailure.InUse where the server of this folder runs
   */
  static boolean run(Settings settings, PrintStream console) throws InterruptedException {
    try (Foundation foundation = Foundation.lay(settings);
        Database database =
            new Database(foundation.database(), Database.CONNECTIONS, Clock.systemUTC())) {
      IndexedStudios studios = new IndexedStudios(database);
      try (SetupIndex index = Catalogue.openIndex(settings.data(), studios)) {
        index
            .needsRebuild()
            .ifPresent(reason -> console.println("The index is built anew: " + reason + "."));
        try (Follower follower = Follower.start(index, studios)) {
          return compare(index, follower, studios, console);
        }
      }
    }
  }

  private static boolean compare(
      SetupIndex index, Follower follower, IndexedStudios studios, PrintStream console)
      throws InterruptedException {
    IndexComparison found = IndexComparison.of(index, follower, studios, PATIENCE);
    for (int i = 1; i < TIMES && !found.isEqual(); i++) {
      found = IndexComparison.of(index, follower, studios, PATIENCE);
    }
    if (found.isEqual()) {
      console.println("The index equals the database: " + setups(found.equal()) + ".");
      return true;
    }
    console.println("The index differs from the database; " + setups(found.equal()) + " equal.");
    tell(console, "not in the index", found.missing());
    tell(console, "of which it says something else", found.different());
    tell(console, "not in the database", found.surplus());
    console.println("To have it built anew, delete the folder index in the data folder.");
    return false;
  }

  private static void tell(PrintStream console, String what, List<String> names) {
    if (!names.isEmpty()) {
      console.println(
          setups(names.size())
              + " "
              + what
              + ": "
              + String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
              + (names.size() > NAMED ? " and more" : "")
              + ".");
    }
  }

  private static String setups(long count) {
    return count == 1 ? "1 setup" : count + " setups";
  }
}
