package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How much of the machine a process holds, as Linux tells it.
 *
 * @param residentBytes of memory now
 * @param peakBytes of memory at most since it began
 * @param heapBytes of Java objects; after a collection that was asked for, if it was
 * @param threads of the platform
 * @param files that it holds open, connections among them
 */
record Footprint(long residentBytes, long peakBytes, long heapBytes, int threads, int files) {

  private static final Pattern HEAP_USED = Pattern.compile("used (\\d+)K");

  /** Of a Java process, after all garbage was collected. */
  static Footprint collected(long pid) throws IOException, InterruptedException {
    var _ = jcmd(pid, "GC.run");
    return of(pid);
  }

  /** Of a Java process as it is. */
  static Footprint of(long pid) throws IOException, InterruptedException {
    String status = Files.readString(Path.of("/proc/" + pid + "/status"));
    Matcher heap = HEAP_USED.matcher(jcmd(pid, "GC.heap_info"));
    int files;
    try (Stream<Path> open = Files.list(Path.of("/proc/" + pid + "/fd"))) {
      files = (int) open.count();
    }
    return new Footprint(
        kilobytes(status, "VmRSS"),
        kilobytes(status, "VmHWM"),
        heap.find() ? Long.parseLong(heap.group(1)) * 1024 : 0,
        (int) (kilobytes(status, "Threads") / 1024),
        files);
  }

  /** For how long the machine has worked for a process, on all of its cores together. */
  static Duration worked(ProcessHandle process) {
    return process.info().totalCpuDuration().orElse(Duration.ZERO);
  }

  private static long kilobytes(String status, String name) {
    return status
            .lines()
            .filter(line -> line.startsWith(name + ":"))
            .map(line -> Long.parseLong(line.replaceAll("\\D", "")))
            .findFirst()
            .orElse(0L)
        * 1024;
  }

  private static String jcmd(long pid, String what) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                Long.toString(pid),
                what)
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    var _ = process.waitFor();
    return said;
  }

  /** The bytes of all files below a folder. */
  static long bytesIn(Path folder) throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      return tree.filter(Files::isRegularFile).mapToLong(Footprint::size).sum();
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (NoSuchFileException gone) {
      return 0;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
