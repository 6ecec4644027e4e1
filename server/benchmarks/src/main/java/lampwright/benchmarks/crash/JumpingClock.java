package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.benchmarks.load.Run;
import lampwright.document.Json;

/**
 * The clock of the day goes six hours forward, twelve back and six forward again, of the server and
 * of its PostgreSQL alike, while both run: libfaketime lies before the C library and is told by a
 * file. What only measures durations (CLOCK_MONOTONIC) goes on evenly, as it does on a real
 * machine.
 */
final class JumpingClock {

  private static final Path LIBRARIES = Path.of("/usr/lib");
  private static final String LIBRARY = "libfaketimeMT.so.1";
  private static final List<Integer> HOURS = List.of(6, -6, 0);
  private static final int VISITS_PER_MINUTE = 120;
  private static final int PAGE = 3;

  /** What takes longer than this waits for the clock. */
  private static final Duration SOON = Duration.ofSeconds(20);

  private final Stage stage;
  private final List<String> failed = new ArrayList<>();

  JumpingClock(Stage stage) {
    this.stage = stage;
  }

  private record Session(int status, String cookie) {}

  void show() throws Exception {
    Optional<Path> library = library();
    if (library.isEmpty()) {
      stage.skip("a clock that jumps", LIBRARY + " is not there (apt-get install libfaketime)");
      return;
    }
    Path told = stage.folder().resolve("clock");
    Files.writeString(told, "+0h\n");
    Map<String, String> more =
        Map.of(
            "LD_PRELOAD",
            library.get().toString(),
            "FAKETIME_TIMESTAMP_FILE",
            told.toString(),
            "FAKETIME_CACHE_DURATION",
            "1",
            "FAKETIME_DONT_FAKE_MONOTONIC",
            "1",
            // With its mending every timed wait of the virtual machine ends at once.
            "FAKETIME_FORCE_MONOTONIC_FIX",
            "0",
            "NO_FAKE_STAT",
            "1",
            "LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE",
            Integer.toString(VISITS_PER_MINUTE));
    try (Run server = stage.start(stage.folder().resolve("clock-data"), more)) {
      var _ = server.awaitReady(Stage.READY);
      Entry entry = Entry.of(server);
      Session session = signIn(entry.api(), Crash.PASSWORD);
      String thing = entry.mustWrite("Dated first");
      var _ = signIn(entry.api(), "not the password");
      int revision = 1;
      for (int hours : HOURS) {
        Api stranger = new Api(server.address(), "");
        exhaust(stranger);
        Files.writeString(told, "%+dh%n".formatted(hours), StandardCharsets.US_ASCII);
        Instant now = Instant.now().plus(Duration.ofHours(hours));
        Duration moved = Stage.until(() -> isNear(entry.api(), now));
        if (!Stage.isInTime(moved)) {
          throw new IllegalStateException("The server's clock does not follow " + LIBRARY);
        }
        failed.clear();
        Duration free = Stage.until(() -> stranger.get("/sign-in").status() != 429);
        must("a visitor who asked too often is heard again", free.compareTo(SOON) < 0);
        look(server, entry, session, thing, ++revision);
        var _ = signIn(entry.api(), "not the password");
        stage.line(
            "the clock at %+d hours".formatted(hours),
            "heard again after %d ms; %s"
                .formatted(
                    free.toMillis(),
                    failed.isEmpty()
                        ? "session, token, sign-in, changes, search, lists, audit trail and"
                            + " readiness as before"
                        : "NOT: " + String.join("; ", failed)),
            failed.isEmpty());
      }
    }
  }

  private static Optional<Path> library() throws IOException {
    try (Stream<Path> tree = Files.find(LIBRARIES, 3, (path, _) -> path.endsWith(LIBRARY))) {
      return tree.findFirst();
    }
  }

  private void must(String what, boolean holds) {
    if (!holds) {
      failed.add(what);
    }
  }

  private static boolean isNear(Api api, Instant wanted) throws IOException {
    String date = api.get("/health/live").headers().getOrDefault("date", "");
    Instant there = ZonedDateTime.parse(date, DateTimeFormatter.RFC_1123_DATE_TIME).toInstant();
    return Duration.between(wanted, there).abs().compareTo(Duration.ofMinutes(10)) < 0;
  }

  /** Asks until it is too often. */
  private static void exhaust(Api api) throws IOException {
    int most = 20 * VISITS_PER_MINUTE;
    for (int i = 0; i < most; i++) {
      if (api.get("/sign-in").status() == 429) {
        return;
      }
    }
  }

  private static Session signIn(Api api, String password) throws IOException {
    Api.Answer answer =
        new Api(api.address(), "")
            .post("/api/session", Map.of("email", Crash.EMAIL, "password", password), Map.of());
    return new Session(
        answer.status(), answer.headers().getOrDefault("set-cookie", "").replaceFirst(";.*", ""));
  }

  private void look(Run server, Entry entry, Session session, String thing, int revision)
      throws IOException, InterruptedException {
    Api api = entry.api();
    must("ready", Stage.isInTime(server.awaitReady(Stage.READY)));
    must(
        "the session of before",
        new Api(api.address(), "")
                .send("GET", "/api/studios", new byte[0], Map.of("Cookie", session.cookie()))
                .status()
            == 200);
    Duration in = Stage.until(() -> signIn(api, Crash.PASSWORD).status() < 300);
    must("a new sign-in after a wrong one", in.compareTo(SOON) < 0);
    String title = "Dated" + revision;
    Api.Answer changed =
        api.send(
            "PATCH",
            thing,
            Json.print(Map.of("title", title)).getBytes(StandardCharsets.UTF_8),
            Map.of(
                "If-Match",
                "\"" + (revision - 1) + "\"",
                "Content-Type",
                "application/merge-patch+json"));
    must(
        "a change, which is answered " + changed.status(),
        changed.status() == 200 && changed.number("revision") == revision);
    must(
        "found as it is now",
        Stage.until(() -> entry.total("dated" + revision) >= 1).compareTo(SOON) < 0);
    var _ = entry.mustWrite("Another of the day");
    List<String> numbers =
        api.get(thing + "/revisions?limit=100").items().stream()
            .map(one -> field(one, "revision"))
            .toList();
    List<String> wanted = new ArrayList<>();
    for (int i = revision; i > 0; i--) {
      wanted.add(Integer.toString(i));
    }
    must("revisions in their order, which are " + numbers, numbers.equals(wanted));
    everyOneOnce("setups", api, entry.studio() + "/setups?facets=none", "id");
    everyOneOnce("the audit trail", api, entry.studio() + "/audit", "number");
  }

  /** Small pages tell each thing once, in the order of one large page. */
  private void everyOneOnce(String what, Api api, String path, String key) throws IOException {
    String limit = path + (path.contains("?") ? "&" : "?") + "limit=";
    List<String> whole = api.get(limit + 100).items().stream().map(one -> field(one, key)).toList();
    List<String> walked = new ArrayList<>();
    String cursor = "";
    do {
      Api.Answer page = api.get(limit + PAGE + cursor);
      page.items().forEach(one -> walked.add(field(one, key)));
      String next = page.at("next").toString();
      cursor = next.isEmpty() || next.equals("null") ? "" : "&cursor=" + next;
    } while (!cursor.isEmpty() && walked.size() <= whole.size());
    Set<String> different = new HashSet<>(walked);
    must(
        what + " page by page",
        !whole.isEmpty() && walked.equals(whole) && different.size() == walked.size());
  }

  private static String field(Object item, String name) {
    return item instanceof Map<?, ?> map && map.get(name) != null
        ? map.get(name).toString().replaceFirst("\\.0$", "")
        : "";
  }
}
