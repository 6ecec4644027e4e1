package lampwright.benchmarks.crash;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;
import org.jspecify.annotations.Nullable;

/**
 * Four clients write; something is killed; everything is started again and held against what was
 * acknowledged. So many rounds, by a seed: the seed decides who writes what and what is killed
 * when, not the order in which the machine does it.
 *
 * <p>Arguments {@code name=value}: {@code rounds} (100), {@code seed} (1). Ends with 1 and leaves
 * its folder where an invariant does not hold.
 */
public final class Crash {

  private static final int WRITERS = 4;
  private static final Duration READY = Duration.ofSeconds(60);
  private static final Duration COMES_BACK = Duration.ofSeconds(20);
  static final String EMAIL = "owner@crash.example";
  static final String PASSWORD = "nothing is lost here";

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Random random;
  private final Path folder;
  private final Path data;
  private final ConcurrentMap<Integer, String> winners = new ConcurrentHashMap<>();
  private final List<Writer> writers = new ArrayList<>();
  private final Map<Killing, Integer> struck = new TreeMap<>();
  private String token = "";
  private String readerToken = "";
  private String studio = "";
  private String shared = "";
  private Duration slowest = Duration.ZERO;
  private int startedForDatabase;

  private @Nullable Run latest;

  private Crash(long seed, Path folder) {
    this.random = new Random(seed);
    this.folder = folder;
    this.data = folder.resolve("data");
  }

  public static void main(String[] arguments) throws Exception {
    int rounds = 100;
    long seed = 1;
    for (String argument : arguments) {
      String[] parts = argument.split("=", 2);
      switch (parts[0]) {
        case "rounds" -> rounds = Integer.parseInt(parts[1]);
        case "seed" -> seed = Long.parseLong(parts[1]);
        default -> throw new IllegalArgumentException(argument + " is no argument of this.");
      }
    }
    Path folder = Files.createTempDirectory("lampwright-crash");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    Crash crash = new Crash(seed, folder);
    try {
      crash.run(rounds, seed);
    } catch (Lost lost) {
      crash.out.printf(
          "%nLOST (seed %d): %s%nThe folder stays: %s%n", seed, lost.getMessage(), folder);
      lost.printStackTrace(crash.out);
      System.exit(1);
    }
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
    System.exit(0);
  }

  private Run start() throws IOException {
    return Run.server(folder.resolve("server.log"), List.of("-XX:+UseSerialGC"), settings(data));
  }

  /** Of a server with an owner and nothing else. */
  static Map<String, String> settings(Path data) {
    return Map.of(
        "LAMPWRIGHT_PORT",
        "0",
        "LAMPWRIGHT_MEANING",
        "false",
        "LAMPWRIGHT_DATA",
        data.toString(),
        "LAMPWRIGHT_OWNER_EMAIL",
        EMAIL,
        "LAMPWRIGHT_OWNER_PASSWORD",
        PASSWORD,
        // One member asks for everybody here, and would soon be told to wait.
        "LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE",
        "0",
        "LAMPWRIGHT_MEMBER_COSTLY_REQUESTS_PER_MINUTE",
        "0",
        "LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE",
        "0");
  }

  private void run(int rounds, long seed) throws Exception {
    out.printf("%d rounds, seed %d, %d clients, in %s%n", rounds, seed, WRITERS, folder);
    Run server = start();
    latest = server;
    try {
      var _ = server.awaitReady(READY);
      comeIn(new Api(server.address(), ""));
      Api api = new Api(server.address(), token);
      for (int i = 0; i < WRITERS; i++) {
        writers.add(
            new Writer("w" + i, seed * 31 + i, studio + "/setups", shared, winners, folder));
      }
      for (int round = 0; round < rounds; round++) {
        server = round(round, server, api);
        api = new Api(server.address(), token);
      }
      rebuilt(server, api);
      new KilledBackup(folder, data, random).takeFrom(server);
    } finally {
      // The last one that was started, also where a round ended in the middle.
      if (latest != null) {
        latest.close();
      }
      for (Writer writer : writers) {
        writer.close();
      }
    }
    checkIndex(data);
    restored();
    tell(rounds);
  }

  private void comeIn(Api stranger) throws IOException {
    token = token(stranger, Map.of("name", "writer"));
    readerToken = token(stranger, Map.of("name", "reader", "at_most", "reader"));
    Api owner = new Api(stranger.address(), token);
    studio = firstStudio(owner);
    shared =
        owner
            .post(studio + "/setups", Writer.document("Everybody's"), Map.of())
            .location()
            .orElseThrow();
  }

  /** A token of the owner's. */
  static String token(Api stranger, Map<String, String> wish) throws IOException {
    Api.Answer session =
        stranger.post("/api/session", Map.of("email", EMAIL, "password", PASSWORD), Map.of());
    String cookie = session.headers().getOrDefault("set-cookie", "");
    Map<String, String> signedIn =
        Map.of(
            "Cookie",
            cookie.substring(0, cookie.indexOf(';')),
            "X-CSRF-Token",
            session.at("csrf_token").toString());
    return stranger.post("/api/tokens", wish, signedIn).at("token").toString();
  }

  /** The address of the studio that the settings' owner has. */
  static String firstStudio(Api owner) throws IOException {
    Object first = owner.get("/api/studios").items().getFirst();
    return "/api/studios/" + (first instanceof Map<?, ?> map ? map.get("id") : "");
  }

  private Run round(int number, Run server, Api api) throws Exception {
    Killing killing = Killing.of(number, random);
    long writes = 300 + random.nextInt(2_700);
    struck.merge(killing, 1, Integer::sum);
    long before = writers.stream().mapToLong(Writer::answered).sum();
    AtomicBoolean stop = new AtomicBoolean();
    Run now = server;
    Duration ready;
    boolean again = false;
    try (ExecutorService clients = Executors.newFixedThreadPool(WRITERS)) {
      List<Future<?>> running = new ArrayList<>();
      for (Writer writer : writers) {
        running.add(clients.submit(() -> writer.write(api, stop)));
      }
      TimeUnit.MILLISECONDS.sleep(writes);
      boolean mustStart = killing.strike(server, random);
      if (!mustStart) {
        // What nobody killed goes on working, and so do its clients.
        TimeUnit.MILLISECONDS.sleep(300);
      }
      stop.set(true);
      for (Future<?> one : running) {
        one.get(2, TimeUnit.MINUTES);
      }
      long began = System.nanoTime();
      if (!mustStart) {
        again = !comesBack(server);
      }
      if (mustStart || again) {
        if (again) {
          startedForDatabase++;
          server.kill();
        }
        now = start();
        latest = now;
      }
      var _ = now.awaitReady(READY);
      ready = Duration.ofNanos(System.nanoTime() - began);
    }
    slowest = ready.compareTo(slowest) > 0 ? ready : slowest;
    if (now != server) {
      writers.forEach(Writer::forgetLoose);
    }
    Api owner = new Api(now.address(), token);
    Proof proof =
        new Proof(owner, new Api(now.address(), readerToken), studio, data.resolve("pictures"));
    for (Writer writer : writers) {
      proof.everythingOf(writer);
    }
    proof.oneWinnerEach(shared, winners);
    proof.countsAreRight(living());
    proof.filesEqualRows(writers);
    out.printf(
        "%3d  %-52s after %4d ms  %4d acknowledged  ready after %5d ms%s%n",
        number + 1,
        killing.words(),
        writes,
        writers.stream().mapToLong(Writer::answered).sum() - before,
        ready.toMillis(),
        again ? "  (did not come back by itself)" : "");
    return now;
  }

  private long living() {
    return 1
        + writers.stream()
            .flatMap(writer -> writer.things().stream())
            .filter(thing -> thing.isMade() && !thing.isDeleted)
            .count();
  }

  /** Whether it is ready again without being started anew. */
  private static boolean comesBack(Run server) throws IOException, InterruptedException {
    try {
      var _ = server.awaitReady(COMES_BACK);
      return true;
    } catch (IllegalStateException | IOException notYet) {
      return false;
    }
  }

  /** I11: an index that was made anew finds the same in the same order. */
  private void rebuilt(Run server, Api owner) throws IOException, InterruptedException {
    Proof proof = new Proof(owner, owner, studio, data.resolve("pictures"));
    List<String> before = proof.tops();
    Api.Answer ordered = owner.post(studio + "/index/rebuild", Map.of(), Map.of());
    if (ordered.status() >= 300) {
      throw new Lost("I11", "No rebuild: " + ordered.text());
    }
    while (owner.get(studio + "/index").at("rebuild") instanceof Map<?, ?>) {
      TimeUnit.MILLISECONDS.sleep(100);
    }
    var _ = server.awaitReady(READY);
    List<String> after = proof.tops();
    if (!before.equals(after)) {
      throw new Lost("I11", before + " became " + after);
    }
  }

  /** I7, both ways: the index says of every setup what the database says. */
  /** I14: what a backup brings back is what was acknowledged. */
  private void restored() throws IOException, InterruptedException {
    Path elsewhere = new KilledBackup(folder, data, random).restore();
    checkIndex(elsewhere);
    try (Run server =
        Run.server(
            folder.resolve("server.log"), List.of("-XX:+UseSerialGC"), settings(elsewhere))) {
      var _ = server.awaitReady(READY);
      writers.forEach(Writer::forgetLoose);
      Proof proof =
          new Proof(
              new Api(server.address(), token),
              new Api(server.address(), readerToken),
              studio,
              elsewhere.resolve("pictures"));
      for (Writer writer : writers) {
        proof.everythingOf(writer);
      }
      proof.oneWinnerEach(shared, winners);
      proof.countsAreRight(living());
      proof.filesEqualRows(writers);
    }
  }

  private void checkIndex(Path data) throws IOException, InterruptedException {
    Program check = Program.start(folder, data, List.of("check-index"));
    String said = check.said();
    if (check.awaitEnd() != 0) {
      throw new Lost("I7", said);
    }
    out.print(said);
  }

  private void tell(int rounds) {
    out.printf(
        "%nAll held: I1 to I11 and I13 to I15, over %d rounds.%n"
            + "%,d changes acknowledged, %,d answered by 5xx while the database was away.%n"
            + "Slowest from the strike to ready (I15, at most %d s): %.1f s.%n"
            + "The server had to be started anew for a killed database: %d of %d times.%n",
        rounds,
        writers.stream().mapToLong(Writer::answered).sum(),
        writers.stream().mapToLong(Writer::refused).sum(),
        READY.toSeconds(),
        slowest.toMillis() / 1e3,
        startedForDatabase,
        struck.getOrDefault(Killing.DATABASE, 0));
    struck.forEach((killing, times) -> out.printf("%4d times %s%n", times, killing.words()));
  }
}
