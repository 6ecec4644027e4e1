package lampwright.benchmarks.load;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The load tool wrk in its closed loop: as many requests as are answered, by so many connections
 * that each ask again as soon as they have their answer. That finds how much a server can do; how
 * long somebody waits, {@link OpenLoop} finds.
 */
final class Wrk {

  /**
   * Paths are drawn at random from a file, with the ETag that is sent along behind a tab; one that
   * ends with {@link Load#ANEW} gets another number each time.
   */
  private static final String SCRIPT =
      """
      local paths, tags, anew = {}, {}, 0
      function init(args)
        anew = tonumber(args[2]) * 1000000
        math.randomseed(tonumber(args[2]))
        for line in io.lines(args[1]) do
          local path, tag = line:match("^([^\\t]*)\\t?(.*)$")
          paths[#paths + 1] = path
          tags[#tags + 1] = tag
        end
      end
      function request()
        local i = math.random(#paths)
        wrk.headers["If-None-Match"] = tags[i] ~= "" and tags[i] or nil
        local path = paths[i]
        if path:sub(-#"anew=") == "anew=" then
          anew = anew + 1
          path = path .. anew
        end
        return wrk.format("GET", path)
      end
      function done(summary, latency, requests)
        local e = summary.errors
        print(string.format("RESULT %d %d %d %d", summary.requests, summary.duration,
          e.status + e.connect + e.read + e.write + e.timeout, latency:percentile(99)))
      end
      """;

  private final Path script;
  private final int connections;
  private int seed = 1;

  private Wrk(Path script, int connections) {
    this.script = script;
    this.connections = connections;
  }

  static Wrk in(Path folder, int connections) throws IOException {
    Path script = folder.resolve("random-paths.lua");
    Files.writeString(script, SCRIPT);
    return new Wrk(script, connections);
  }

  /** What a round came to. */
  record Round(long requests, double seconds, long errors) {

    double perSecond() {
      return requests / seconds;
    }
  }

  /** Drives one server for so many seconds. */
  Round run(String address, Path paths, Map<String, String> headers, int seconds)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                "wrk",
                "-t1",
                "-c" + connections,
                "-d" + seconds + "s",
                "--timeout",
                "10s",
                "-s",
                script.toString()));
    headers.forEach((name, value) -> command.addAll(List.of("-H", name + ": " + value)));
    command.addAll(List.of(address, "--", paths.toString(), Integer.toString(seed++)));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(30, TimeUnit.SECONDS) || process.exitValue() != 0) {
      throw new IllegalStateException("wrk failed: " + said);
    }
    String[] result =
        said.lines()
            .filter(line -> line.startsWith("RESULT "))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("wrk said no result: " + said))
            .split(" ", -1);
    return new Round(
        Long.parseLong(result[1]), Long.parseLong(result[2]) / 1e6, Long.parseLong(result[3]));
  }
}
