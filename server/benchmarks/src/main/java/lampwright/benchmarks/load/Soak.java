package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.ToDoubleFunction;

/**
 * Whether the server holds no more after hours than after minutes: a mixed load at half of what it
 * can do, and every ten seconds a look at what it holds. A line through the second half of the
 * looks says whether each levels off.
 *
 * <p>Arguments {@code name=value}: {@code minutes} (20) or {@code seconds}, {@code setups} (1000),
 * {@code keep} the folder of generated catalogues. Ends with 1 where something goes on growing or a
 * request failed. In less than five minutes the virtual machine is still warming up: then nothing
 * is said of what grows, and only failed requests count.
 */
public final class Soak {

  private static final int CONNECTIONS = 32;
  private static final int LOOKS = 120;
  private static final Duration MOST_BETWEEN_LOOKS = Duration.ofSeconds(10);
  private static final Duration MOST_SATURATING = Duration.ofSeconds(20);
  private static final Duration TELLING = Duration.ofMinutes(5);

  /** So much may the line rise from half time to the end, as a share of the mean. */
  private static final double LEVEL = 0.05;

  /** Or by so many, of what is counted in dozens. */
  private static final double A_FEW = 4;

  private static final double MEGABYTE = 1e6;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  private Soak() {}

  private record Look(
      double seconds,
      Footprint footprint,
      double databaseConnections,
      double heapAfterCollection) {}

  public static void main(String[] arguments) throws Exception {
    Duration time = Duration.ofMinutes(20);
    int setups = 1_000;
    String keep = "";
    for (String argument : arguments) {
      String[] parts = argument.split("=", 2);
      switch (parts[0]) {
        case "minutes" -> time = Duration.ofMinutes(Long.parseLong(parts[1]));
        case "seconds" -> time = Duration.ofSeconds(Long.parseLong(parts[1]));
        case "setups" -> setups = Integer.parseInt(parts[1]);
        case "keep" -> keep = parts[1];
        default -> throw new IllegalArgumentException(argument + " is no argument of this.");
      }
    }
    Path folder =
        keep.isEmpty()
            ? Files.createTempDirectory("lampwright-soak")
            : Path.of(keep).toAbsolutePath().resolve(setups + "-words");
    boolean level = new Soak().run(folder, setups, time);
    System.exit(level ? 0 : 1);
  }

  private boolean run(Path folder, int setups, Duration time) throws Exception {
    try (Machine machine = Machine.start(folder, setups, false, List.of(), out)) {
      OpenLoop.Asked mixed =
          new OpenLoop.Asked(machine.server().port(), mixed(machine.facts()), 200);
      // First to warm it up, then to see what it can do.
      Duration saturating = shorter(time.dividedBy(4), MOST_SATURATING);
      var _ = OpenLoop.saturate(mixed, CONNECTIONS, saturating);
      double most = OpenLoop.saturate(mixed, CONNECTIONS, saturating);
      double half = most / 2;
      out.printf(
          Locale.ROOT,
          "%,d setups; it answers %.0f requests/s of the mix, so %.0f/s are asked for %d" + " s.%n",
          setups,
          most,
          half,
          time.toSeconds());
      AtomicReference<OpenLoop.Waits> waits = new AtomicReference<>();
      Thread asking =
          Thread.ofPlatform()
              .start(
                  () -> {
                    try {
                      waits.set(OpenLoop.run(mixed, half, CONNECTIONS, time));
                    } catch (IOException | InterruptedException e) {
                      throw new IllegalStateException(e);
                    }
                  });
      List<Look> looks = new ArrayList<>();
      long began = System.nanoTime();
      Duration between =
          shorter(MOST_BETWEEN_LOOKS, time.dividedBy(LOOKS).plus(Duration.ofSeconds(1)));
      while (!asking.join(between)) {
        looks.add(look(machine, began));
      }
      OpenLoop.Waits measured = waits.get();
      if (measured == null) {
        throw new IllegalStateException("The clients have ended early.");
      }
      return judge(looks, measured, time.compareTo(TELLING) >= 0);
    }
  }

  private static Duration shorter(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? one : other;
  }

  /** Of ten requests six read a setup, two its figures, one searches, one looks at the page. */
  private static List<byte[]> mixed(GeneratedCatalogue.Facts facts) {
    String token = "Authorization: Bearer " + facts.token() + "\r\n";
    String session = "Cookie: lampwright_session=" + facts.session() + "\r\n";
    String setups = "/studios/" + facts.studio() + "/setups";
    List<byte[]> requests = new ArrayList<>();
    for (int i = 0; i < facts.addresses().size(); i++) {
      String id = facts.addresses().get(i).split("\t", -1)[0];
      String path = setups + "/" + id;
      String words =
          facts.questions().get(i % facts.questions().size()).strip().replaceAll("\\s+", "+");
      requests.add(
          switch (i % 10) {
            case 6, 7 -> Connection.request("/api" + path + "/figures", token);
            case 8 -> Connection.request("/api" + setups + "?q=" + words, token);
            case 9 -> Connection.request(path, session);
            default -> Connection.request("/api" + path, token);
          });
    }
    return requests;
  }

  private static Look look(Machine machine, long began)
      throws IOException, InterruptedException, SQLException {
    Footprint now = Footprint.of(machine.server().pid());
    double collected = Footprint.collected(machine.server().pid()).heapBytes();
    double connections =
        machine.number(
            "select count(*) from pg_stat_activity where application_name = 'lampwright'");
    return new Look((System.nanoTime() - began) / 1e9, now, connections, collected);
  }

  private boolean judge(List<Look> looks, OpenLoop.Waits waits, boolean isTelling) {
    out.printf(
        Locale.ROOT,
        "%,d answered, %d failed; p50 %.1f ms, p99 %.1f ms, p999 %.1f ms.%n%n",
        waits.nanos().getTotalCount(),
        waits.failures(),
        waits.millis(50),
        waits.millis(99),
        waits.millis(99.9));
    if (!isTelling || looks.isEmpty()) {
      out.println("Too short to say whether anything grows.");
      return waits.failures() == 0;
    }
    out.println("| what | first look | half time | last look | rises, second half | levels off |");
    out.println("| --- | --- | --- | --- | --- | --- |");
    boolean level = waits.failures() == 0;
    level &=
        row(looks, "heap after a collection, MB", look -> look.heapAfterCollection() / MEGABYTE);
    level &= row(looks, "resident, MB", look -> look.footprint().residentBytes() / MEGABYTE);
    level &= row(looks, "threads of the platform", look -> look.footprint().threads());
    level &= row(looks, "open files and sockets", look -> look.footprint().files());
    level &= row(looks, "connections to the database", Look::databaseConnections);
    return level;
  }

  private boolean row(List<Look> looks, String what, ToDoubleFunction<Look> of) {
    List<Look> half = looks.subList(looks.size() / 2, looks.size());
    double mean = half.stream().mapToDouble(of).average().orElse(0);
    double rise = slope(half, of) * (half.getLast().seconds() - half.getFirst().seconds());
    boolean isLevel = rise <= Math.max(LEVEL * mean, A_FEW);
    out.printf(
        Locale.ROOT,
        "| %s | %.1f | %.1f | %.1f | %+.1f (%+.1f %%) | %s |%n",
        what,
        of.applyAsDouble(looks.getFirst()),
        of.applyAsDouble(half.getFirst()),
        of.applyAsDouble(looks.getLast()),
        rise,
        mean == 0 ? 0 : 100 * rise / mean,
        isLevel ? "yes" : "**no**");
    return isLevel;
  }

  /** Of the line with the least squares, a second. */
  private static double slope(List<Look> looks, ToDoubleFunction<Look> of) {
    double time = looks.stream().mapToDouble(Look::seconds).average().orElse(0);
    double value = looks.stream().mapToDouble(of).average().orElse(0);
    double above = 0;
    double below = 0;
    for (Look look : looks) {
      above += (look.seconds() - time) * (of.applyAsDouble(look) - value);
      below += (look.seconds() - time) * (look.seconds() - time);
    }
    return below == 0 ? 0 : above / below;
  }
}
