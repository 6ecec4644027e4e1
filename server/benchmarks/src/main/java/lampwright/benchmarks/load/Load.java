package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How fast the server answers, beside a bare handler of the same web framework and a bare select on
 * the same database, in one run, and how that changes from a small catalogue to a very large one.
 *
 * <p>First wrk finds, in turns and several times over, how many requests a second each can answer;
 * then {@link OpenLoop} asks at half of that, at fixed times, and tells how long one waits. Client,
 * server and database share the machine, so only the ratios say something about another one. Where
 * an answer was not the one that was expected, no rate is told, and the program fails.
 *
 * <p>Arguments {@code name=value}: {@code sizes} (1000,10000,100000), {@code seconds} of each round
 * of wrk (4), {@code rounds} (3), {@code latency} seconds of each open loop (10), {@code
 * connections} (16), {@code meaning} (true), {@code keep} a folder in which generated catalogues
 * stay, {@code jvm} options for the server, {@code only} what has this pattern in its name.
 */
public final class Load {

  private static final double TO_ONE_SELECT = 0.8;
  private static final double TO_BARE_304 = 0.5;
  private static final double PAGE_TO_JSON = 0.4;
  private static final double SEARCH_P99_MILLIS = 50;
  private static final long MOST_RESIDENT = 1_500_000_000L;
  private static final double FLAT = 1.25;
  private static final int VERY_MANY = 100_000;
  private static final int LATENCY_CONNECTIONS = 64;

  /** Ends a path that is asked with another number each time, so that no answer was kept. */
  static final String ANEW = "anew=";

  private static final String FULL_TEXT = "PostgreSQL full text";

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Options options;

  /** The measured rates, by size, then by name. */
  private final Map<Integer, Map<String, Double>> rates = new LinkedHashMap<>();

  /**
   * What server and database together work for one request, in microseconds of one core, by size,
   * then by name. Others on the machine make the rates smaller, and this hardly larger.
   */
  private final Map<Integer, Map<String, Double>> works = new LinkedHashMap<>();

  private final Map<Integer, Map<String, OpenLoop.Waits>> waits = new LinkedHashMap<>();
  private final Map<Integer, Footprint> footprints = new LinkedHashMap<>();

  /** What was answered otherwise than it should be, of which nothing else is told. */
  private final List<String> wrong = new ArrayList<>();

  private Load(Options options) {
    this.options = options;
  }

  private record Options(Map<String, String> given) {

    static Options of(String[] arguments) {
      Map<String, String> given = new LinkedHashMap<>();
      for (String argument : arguments) {
        int equals = argument.indexOf('=');
        if (equals < 0) {
          throw new IllegalArgumentException(argument + " must be name=value.");
        }
        given.put(argument.substring(0, equals), argument.substring(equals + 1));
      }
      return new Options(given);
    }

    int number(String name, int usual) {
      return given.getOrDefault(name, "").isBlank() ? usual : Integer.parseInt(given.get(name));
    }

    String text(String name, String usual) {
      String value = given.getOrDefault(name, "");
      return value.isBlank() ? usual : value;
    }
  }

  /**
   * One thing to be asked for.
   *
   * @param bare whether of the bare server
   * @param paths with the ETag to send along behind a tab
   * @param status of a right answer
   */
  private record Case(
      String name, boolean bare, List<String> paths, Map<String, String> headers, int status) {}

  public static void main(String[] arguments) throws Exception {
    Load load = new Load(Options.of(arguments));
    for (String size : load.options.text("sizes", "1000,10000,100000").split(",", -1)) {
      load.measure(Integer.parseInt(size.strip()));
    }
    load.judge();
    if (!load.wrong.isEmpty()) {
      throw new IllegalStateException("Wrong answers: " + String.join("; ", load.wrong));
    }
  }

  private void measure(int setups) throws Exception {
    String keep = options.text("keep", "");
    boolean byMeaning = Boolean.parseBoolean(options.text("meaning", "true"));
    Path folder =
        keep.isEmpty()
            ? Files.createTempDirectory("lampwright-load")
            : Path.of(keep).toAbsolutePath().resolve(setups + (byMeaning ? "" : "-words"));
    String jvm = options.text("jvm", "");
    try (Machine machine =
            Machine.start(
                folder,
                setups,
                byMeaning,
                jvm.isEmpty() ? List.of() : List.of(jvm.split(" ", -1)),
                out);
        Run bare = machine.bare()) {
      out.printf(
          "%n## %,d setups%n%nCatalogue ready after %.0f s, index and server after %.1f s"
              + " more.%n%n",
          setups, machine.generatedInSeconds(), machine.toReady().toMillis() / 1e3);
      Pattern only = Pattern.compile(options.text("only", ""));
      List<Case> cases =
          cases(machine.facts()).stream().filter(one -> only.matcher(one.name()).find()).toList();
      for (Case one : cases) {
        mustBeAnswered(one, one.bare() ? bare : machine.server());
      }
      saturate(setups, cases, machine, bare);
      wait(setups, cases, machine, bare);
      remember(setups, machine);
    } finally {
      if (keep.isEmpty()) {
        deleteAll(folder);
      }
    }
  }

  private static List<Case> cases(GeneratedCatalogue.Facts facts) {
    Map<String, String> none = Map.of();
    Map<String, String> token = Map.of("Authorization", "Bearer " + facts.token());
    Map<String, String> session = Map.of("Cookie", "lampwright_session=" + facts.session());
    String api = "/api/studios/" + facts.studio() + "/setups";
    String pages = "/studios/" + facts.studio() + "/setups";
    List<String> known = facts.addresses();
    List<String> ids = known.stream().map(line -> line.split("\t", -1)[0]).toList();
    List<String> asked =
        facts.questions().stream()
            .map(words -> URLEncoder.encode(words, StandardCharsets.UTF_8))
            .toList();
    return List.of(
        new Case("bare hello", true, List.of("/hello"), none, 200),
        new Case("bare select", true, under(pages + "/", ids, ""), none, 200),
        new Case("bare 304", true, under(pages + "/", known, ""), none, 304),
        new Case("setup JSON, token", false, under(api + "/", ids, ""), token, 200),
        new Case("setup JSON, session", false, under(api + "/", ids, ""), session, 200),
        new Case("setup 304, token", false, under(api + "/", known, ""), token, 304),
        new Case("setup 304, session", false, under(api + "/", known, ""), session, 304),
        new Case("setup page", false, under(pages + "/", ids, ""), session, 200),
        new Case("setup page, made anew", false, under(pages + "/", ids, "?" + ANEW), session, 200),
        new Case("figures JSON", false, under(api + "/", ids, "/figures"), token, 200),
        new Case("search, four facets", false, under(api + "?q=", asked, ""), token, 200),
        new Case(
            "search, text alone", false, under(api + "?q=", asked, "&facets=none"), token, 200),
        new Case("search page", false, under(pages + "?q=", asked, ""), session, 200),
        new Case(
            "search page, made anew", false, under(pages + "?q=", asked, "&" + ANEW), session, 200),
        new Case("list JSON", false, List.of(api), token, 200),
        new Case(FULL_TEXT + ", four counts", true, under("/counted?q=", asked, ""), none, 200),
        new Case(FULL_TEXT + ", text alone", true, under("/text?q=", asked, ""), none, 200));
  }

  private static List<String> under(String before, List<String> middles, String after) {
    return middles.stream().map(middle -> before + middle + after).toList();
  }

  /** A wrong answer is soon given, and would be taken for a fast one. */
  private static void mustBeAnswered(Case one, Run by) throws IOException, InterruptedException {
    try (HttpClient client = HttpClient.newHttpClient()) {
      for (String line : one.paths().subList(0, Math.min(5, one.paths().size()))) {
        String[] parts = line.split("\t", -1);
        HttpRequest.Builder ask = HttpRequest.newBuilder(URI.create(by.address() + parts[0]));
        one.headers().forEach(ask::header);
        if (parts.length > 1) {
          ask.header("If-None-Match", parts[1]);
        }
        HttpResponse<String> answer =
            client.send(ask.build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != one.status()) {
          throw new IllegalStateException(
              "%s: %s is answered by %d: %s"
                  .formatted(one.name(), parts[0], answer.statusCode(), answer.body()));
        }
      }
    }
  }

  private void saturate(int setups, List<Case> cases, Machine machine, Run bare)
      throws IOException, InterruptedException, SQLException {
    int seconds = options.number("seconds", 4);
    int rounds = options.number("rounds", 3);
    Wrk wrk = Wrk.in(machine.folder(), options.number("connections", 16));
    Map<String, Path> files = new LinkedHashMap<>();
    for (Case one : cases) {
      Path file = machine.folder().resolve("paths-" + files.size() + ".txt");
      Files.write(file, one.paths());
      files.put(one.name(), file);
    }
    Map<String, List<Double>> found = new LinkedHashMap<>();
    Map<String, List<Double>> worked = new LinkedHashMap<>();
    Map<String, Long> errors = new LinkedHashMap<>();
    // The first round warms both up and is not counted.
    for (int round = 0; round <= rounds; round++) {
      for (Case one : cases) {
        Run by = one.bare() ? bare : machine.server();
        Duration before = Footprint.worked(by.handle()).plus(machine.databaseWorked());
        Wrk.Round result = wrk.run(by.address(), files.get(one.name()), one.headers(), seconds);
        machine.endWhatNobodyWaitsFor();
        Duration after = Footprint.worked(by.handle()).plus(machine.databaseWorked());
        if (round > 0) {
          found.computeIfAbsent(one.name(), _ -> new ArrayList<>()).add(result.perSecond());
          worked
              .computeIfAbsent(one.name(), _ -> new ArrayList<>())
              .add(after.minus(before).toNanos() / 1e3 / Math.max(1, result.requests()));
        }
        errors.merge(one.name(), result.errors(), Long::sum);
      }
    }
    errors.forEach(
        (name, many) -> {
          if (many > 0) {
            wrong.add("%s at %,d setups: %d".formatted(name, setups, many));
            found.remove(name);
            worked.remove(name);
          }
        });
    Map<String, Double> medians = new LinkedHashMap<>();
    found.forEach((name, all) -> medians.put(name, median(all)));
    rates.put(setups, medians);
    Map<String, Double> costs = new LinkedHashMap<>();
    worked.forEach((name, all) -> costs.put(name, median(all)));
    works.put(setups, costs);
    out.println("| closed loop | requests/s, median | lowest to highest | work of one, µs |");
    out.println("| --- | --- | --- | --- |");
    found.forEach(
        (name, all) ->
            out.printf(
                Locale.ROOT,
                "| %s | %,.0f | %,.0f to %,.0f | %,.0f |%n",
                name,
                median(all),
                Collections.min(all),
                Collections.max(all),
                costs.get(name)));
  }

  private static double median(List<Double> all) {
    return all.stream().sorted().skip((all.size() - 1) / 2).findFirst().orElseThrow();
  }

  private void wait(int setups, List<Case> cases, Machine machine, Run bare)
      throws IOException, InterruptedException {
    Duration time = Duration.ofSeconds(options.number("latency", 10));
    Map<String, OpenLoop.Waits> found = new LinkedHashMap<>();
    out.printf("%n| open loop at half of that | asked/s | p50 ms | p99 ms | p999 ms |%n");
    out.println("| --- | --- | --- | --- | --- |");
    for (Case one : cases) {
      if (!rates.get(setups).containsKey(one.name())) {
        continue;
      }
      double perSecond = rates.get(setups).get(one.name()) / 2;
      OpenLoop.Waits measured =
          OpenLoop.run(
              new OpenLoop.Asked(
                  (one.bare() ? bare : machine.server()).port(), requests(one), one.status()),
              perSecond,
              LATENCY_CONNECTIONS,
              time);
      if (measured.failures() > 0) {
        wrong.add(
            "%s in the open loop at %,d setups: %d"
                .formatted(one.name(), setups, measured.failures()));
        continue;
      }
      found.put(one.name(), measured);
      out.printf(Locale.ROOT, "| %s | %,.0f | %s |%n", one.name(), perSecond, measured.line());
    }
    waits.put(setups, found);
  }

  private static List<byte[]> requests(Case one) {
    List<String> paths = new ArrayList<>(one.paths());
    Collections.shuffle(paths, new Random(3));
    if (paths.getFirst().endsWith(ANEW)) {
      List<String> once = paths;
      paths =
          IntStream.range(0, VERY_MANY / 5)
              .mapToObj(number -> once.get(number % once.size()) + "o" + number)
              .toList();
    }
    String headers =
        one.headers().entrySet().stream()
            .map(header -> header.getKey() + ": " + header.getValue() + "\r\n")
            .collect(Collectors.joining());
    return paths.stream()
        .limit(VERY_MANY / 5)
        .map(
            line -> {
              String[] parts = line.split("\t", -1);
              return Connection.request(
                  parts[0],
                  headers + (parts.length > 1 ? "If-None-Match: " + parts[1] + "\r\n" : ""));
            })
        .toList();
  }

  private void remember(int setups, Machine machine)
      throws IOException, InterruptedException, SQLException {
    Footprint footprint = Footprint.collected(machine.server().pid());
    footprints.put(setups, footprint);
    long database =
        machine.number(
            "select sum(pg_total_relation_size(c.oid)) from pg_class c join pg_namespace n on n.oid"
                + " = c.relnamespace where n.nspname = 'lampwright' and c.relkind = 'r'");
    long index = Footprint.bytesIn(machine.index());
    out.printf("%n| memory and room | all | a setup |%n| --- | --- | --- |%n");
    row("resident after a collection", footprint.residentBytes(), setups);
    row("resident at most", footprint.peakBytes(), setups);
    row("Java heap after a collection", footprint.heapBytes(), setups);
    row("PostgreSQL, tables and their indexes", database, setups);
    row("search index", index, setups);
    row(
        "full text in PostgreSQL",
        machine.number("select pg_total_relation_size('bare.setup_text')"),
        setups);
    out.printf("| threads, open files | %d, %d | |%n", footprint.threads(), footprint.files());
  }

  private void row(String what, long bytes, int setups) {
    out.printf(Locale.ROOT, "| %s | %,.1f MB | %,d bytes |%n", what, bytes / 1e6, bytes / setups);
  }

  /** Holds what was measured against the goals. */
  private void judge() {
    out.printf("%n## Ratios%n%n| setups | what | ratio or figure | goal | met |%n");
    out.println("| --- | --- | --- | --- | --- |");
    for (int setups : rates.keySet()) {
      ratio(setups, "setup JSON, token", "bare select", TO_ONE_SELECT);
      ratio(setups, "setup JSON, session", "bare select", TO_ONE_SELECT);
      ratio(setups, "setup 304, token", "bare 304", TO_BARE_304);
      ratio(setups, "setup 304, session", "bare 304", TO_BARE_304);
      ratio(setups, "setup 304, token", "bare hello", 0);
      ratio(setups, "setup page", "setup JSON, session", PAGE_TO_JSON);
      ratio(setups, "setup page, made anew", "setup JSON, session", PAGE_TO_JSON);
      ratio(setups, "search, four facets", FULL_TEXT + ", four counts", 0);
      ratio(setups, "search, text alone", FULL_TEXT + ", text alone", 0);
      OpenLoop.Waits search = waits.get(setups).get("search, four facets");
      if (search != null) {
        double p99 = search.millis(99);
        line(
            setups,
            "search, four facets, p99",
            String.format(Locale.ROOT, "%.1f ms", p99),
            setups >= VERY_MANY ? "under " + (int) SEARCH_P99_MILLIS + " ms" : "",
            p99 < SEARCH_P99_MILLIS);
      }
      long resident = footprints.get(setups).residentBytes();
      line(
          setups,
          "memory, resident",
          String.format(Locale.ROOT, "%.2f GB", resident / 1e9),
          setups >= VERY_MANY ? "under 1.5 GB" : "",
          resident < MOST_RESIDENT);
    }
    flat();
  }

  private void ratio(int setups, String of, String to, double goal) {
    Double one = rates.get(setups).get(of);
    Double other = rates.get(setups).get(to);
    if (one != null && other != null) {
      line(
          setups,
          of + " : " + to,
          String.format(Locale.ROOT, "%.2f", one / other),
          goal > 0 ? "at least " + goal : "",
          one / other >= goal);
      line(
          setups,
          of + " : " + to + ", by work",
          String.format(Locale.ROOT, "%.2f", works.get(setups).get(to) / works.get(setups).get(of)),
          "",
          true);
    }
  }

  private void line(int setups, String what, String figure, String goal, boolean met) {
    out.printf(
        "| %,d | %s | %s | %s | %s |%n",
        setups, what, figure, goal, goal.isEmpty() ? "" : met ? "yes" : "**no**");
  }

  /** What a request costs must not grow with the catalogue. */
  private void flat() {
    List<Integer> sizes = List.copyOf(rates.keySet());
    if (sizes.size() < 2) {
      return;
    }
    int small = sizes.getFirst();
    int large = sizes.getLast();
    for (String name : works.get(small).keySet()) {
      if (name.startsWith("bare") || name.startsWith(FULL_TEXT)) {
        continue;
      }
      Double before = works.get(small).get(name);
      Double after = works.get(large).get(name);
      if (before == null || after == null) {
        continue;
      }
      boolean mayGrow = Arrays.asList("search", "list").contains(name.split("[ ,]", -1)[0]);
      line(
          large,
          name + ", work of one to that at " + small,
          String.format(Locale.ROOT, "%.2f", after / before),
          mayGrow ? "" : "at most " + FLAT,
          after / before <= FLAT);
    }
  }

  private static void deleteAll(Path folder) throws IOException {
    try (var tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Collections.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
