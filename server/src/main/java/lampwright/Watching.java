package lampwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.metrics.Metrics;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.DatabaseWatch;
import lampwright.store.Replica;
import lampwright.web.Lanes;
import lampwright.web.api.HealthApi;
import lampwright.web.api.HealthCheck;
import lampwright.web.api.MetricsApi;
import lampwright.web.http.Admission;
import lampwright.web.http.Capacity;
import lampwright.web.http.Lane;
import lampwright.web.http.MemberLimits;
import lampwright.web.http.Traffic;
import lampwright.web.http.Watchers;

/** How this server is watched: what it measures, what it needs to be ready, what it bounds. */
final class Watching implements AutoCloseable {

  private static final Duration LONGEST_LAG = Duration.ofSeconds(60);
  private static final long LEAST_DISK_BYTES = 256L << 20;
  private static final double MILLIS = 1_000;

  private final Metrics metrics = new Metrics();
  private final DatabaseWatch databaseWatch;
  private final Admission admission;
  private final MemberLimits limits;
  private final Traffic traffic;
  private final List<Path> folders;

  Watching(Settings settings) {
    Running running = settings.running();
    databaseWatch = new DatabaseWatch(running.slowQuery(), Optional.of(metrics.registry()));
    admission =
        new Admission(
            Capacity.of(Runtime.getRuntime().availableProcessors(), running.requestsAtOnce()));
    limits = new MemberLimits(running.perMinute());
    traffic =
        new Traffic(
            admission,
            limits,
            Lanes.byRoute(),
            new Watchers(running.metricsToken()),
            metrics.requestTimes(),
            running.drain());
    folders = Stream.of(settings.data(), settings.pictures().folder()).distinct().toList();
  }

  DatabaseWatch databaseWatch() {
    return databaseWatch;
  }

  Traffic traffic() {
    return traffic;
  }

  /** What is told to whoever watches, once there is somebody to ask. */
  MetricsApi metrics(Database database, Catalogue catalogue, PeopleTasks people) {
    tellOfTraffic();
    database.replica().ifPresent(this::tellOfTheReplica);
    tellOfTheIndex(catalogue);
    metrics.count(
        "lampwright.slow.statements",
        "Statements that took longer than LAMPWRIGHT_SLOW_QUERY_MS",
        databaseWatch::slowStatements);
    metrics.count(
        "lampwright.slow.connections",
        "Waits for a connection of the database that took longer than that",
        databaseWatch::slowConnections);
    metrics.count(
        "lampwright.sign.in.failures",
        "Passwords and codes that were wrong",
        people::failedSignIns);
    metrics.tell(
        "lampwright.imports",
        "Archives that are being brought in or wait to be",
        () -> catalogue.importing().underWay());
    metrics.tell(
        "lampwright.meanings.outstanding",
        "Setups whose meaning is not worked out; NaN where another server does it, or none",
        catalogue::meaningsOutstanding);
    metrics.tell(
        "lampwright.pictures.outstanding",
        "Files of pictures that no setup names any more and that a backup keeps for now",
        () -> catalogue.pictures().upkeep().outstanding());
    return new MetricsApi(metrics::text);
  }

  private void tellOfTraffic() {
    metrics.tell(
        "lampwright.requests.in.flight", "Requests that are being answered", traffic::inFlight);
    metrics.count(
        "lampwright.requests.limited",
        "Requests refused since somebody sent too many",
        limits::refused);
    for (Lane lane : Lane.values()) {
      if (admission.atOnce(lane) > 0) {
        String word = lane.name().toLowerCase(Locale.ROOT);
        metrics.tell(
            "lampwright.lane.working",
            "Requests of a kind that are worked on",
            () -> admission.working(lane),
            "lane",
            word);
        metrics.tell(
            "lampwright.lane.places",
            "Requests of a kind that may be worked on at once",
            () -> admission.atOnce(lane),
            "lane",
            word);
        metrics.tell(
            "lampwright.lane.waiting",
            "Requests of a kind that wait for a place",
            () -> admission.waiting(lane),
            "lane",
            word);
        metrics.count(
            "lampwright.lane.refused",
            "Requests of a kind that found no place",
            () -> admission.refused(lane),
            "lane",
            word);
      }
    }
  }

  private void tellOfTheReplica(Replica replica) {
    metrics.tell(
        "lampwright.replica.used",
        "1 where the replica is read from, 0 where the database answers in its place",
        () -> replica.trouble().isEmpty() ? 1 : 0);
    metrics.tell(
        "lampwright.replica.lag.bytes",
        "Bytes of the database's log that the replica has not replayed; NaN where that is not"
            + " known",
        replica::lagBytes);
    metrics.count(
        "lampwright.replica.readings", "Readings that the replica has answered", replica::answered);
    metrics.count(
        "lampwright.replica.behind",
        "Readings that the database answered, since the replica had not got so far",
        replica::behind);
    metrics.count(
        "lampwright.replica.failures",
        "Readings that the database answered, since something went wrong on the replica",
        replica::failed);
  }

  private void tellOfTheIndex(Catalogue catalogue) {
    metrics.tell(
        "lampwright.index.lag.seconds",
        "For how long the search index may have lacked a change",
        () -> catalogue.indexLag().toMillis() / MILLIS);
    metrics.tell(
        "lampwright.index.documents", "Documents in the search index", catalogue::indexDocuments);
    metrics.tell(
        "lampwright.index.rebuild.done",
        "Setups taken into an index that is being made; NaN where none is",
        () -> catalogue.rebuild().map(it -> (double) it.done()).orElse(Double.NaN));
    metrics.tell(
        "lampwright.index.rebuild.setups",
        "Setups that it will hold; NaN where none is being made",
        () -> catalogue.rebuild().map(it -> (double) it.total()).orElse(Double.NaN));
    metrics.tell(
        "lampwright.index.position.transaction",
        "The last transaction of the change log that searches show",
        () -> catalogue.indexPosition().transactionId());
    metrics.tell(
        "lampwright.index.position.line",
        "The last line of the change log that searches show",
        () -> catalogue.indexPosition().seq());
  }

  /** What this server looks at when it is asked how it is. */
  HealthApi health(Database database, Catalogue catalogue) {
    return new HealthApi(
        List.of(
            new HealthCheck("stopping", this::stopping),
            new HealthCheck("database", () -> databaseTrouble(database)),
            new HealthCheck("search", () -> indexTrouble(catalogue)),
            new HealthCheck("pictures", catalogue.pictures().upkeep()::trouble),
            new HealthCheck("disk", this::diskTrouble),
            new HealthCheck("load", this::overload)),
        catalogue::indexLag);
  }

  private Optional<String> stopping() {
    return traffic.isStopping()
        ? Optional.of("The server is being stopped. Send requests to another.")
        : Optional.empty();
  }

  private static Optional<String> databaseTrouble(Database database) {
    try {
      database.check();
      return Optional.empty();
    } catch (DatabaseUnavailable e) {
      return Optional.of(
          "The database does not answer. See that PostgreSQL runs, is reached from here and has"
              + " room on its disk.");
    }
  }

  private static Optional<String> indexTrouble(Catalogue catalogue) {
    Duration lag = catalogue.indexLag();
    return catalogue
        .trouble()
        .or(
            () ->
                Optional.of(
                        "The search index has not followed the database for %d seconds. The log"
                                .formatted(lag.toSeconds())
                            + " says why.")
                    .filter(_ -> lag.compareTo(LONGEST_LAG) > 0));
  }

  private Optional<String> diskTrouble() {
    for (Path folder : folders) {
      try {
        long bytes = Files.getFileStore(folder).getUsableSpace();
        if (bytes < LEAST_DISK_BYTES) {
          return Optional.of(
              "Only %d MiB are left on the disk of %s. Make room: below %d MiB no picture or archive can be counted on."
                  .formatted(bytes >> 20, folder, LEAST_DISK_BYTES >> 20));
        }
      } catch (IOException e) {
        return Optional.of(
            "The folder %s cannot be looked at. Is it still there?".formatted(folder));
      }
    }
    return Optional.empty();
  }

  private Optional<String> overload() {
    return traffic.isOverloaded()
        ? Optional.of(
            "More requests come than can be worked on, and some were just refused. Send fewer here,"
                + " or add a server.")
        : Optional.empty();
  }

  @Override
  public void close() {
    metrics.close();
  }
}
