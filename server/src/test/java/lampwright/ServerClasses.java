package lampwright;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.spi.ToolProvider;

/**
 * What all server processes of the tests share, made once: the server's classes in jars, an archive
 * of them as they are in memory, and a data folder as a server with a few setups of the demo leaves
 * it. To start takes half as long then; and an archive wants jars.
 */
final class ServerClasses {

  /** Made when the first test wants it; a test that wants none does not wait. */
  private static final class Once {
    static final ServerClasses MADE = make();
  }

  private final String classPath;
  private final Path archive;
  private final Path data;

  private ServerClasses(String classPath, Path archive, Path data) {
    this.classPath = classPath;
    this.archive = archive;
    this.data = data;
  }

  static ServerClasses once() {
    return Once.MADE;
  }

  private static ServerClasses make() {
    try {
      Path folder = ReachableFolder.made();
      Runtime.getRuntime().addShutdownHook(new Thread(() -> takeAway(folder)));
      ServerClasses made =
          new ServerClasses(inJars(folder), folder.resolve("classes.jsa"), folder.resolve("data"));
      Files.createDirectories(made.data);
      ServerProcess.start(
              made.data, Map.of(), made.command("-XX:ArchiveClassesAtExit=" + made.archive))
          .close();
      return made;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String inJars(Path folder) throws IOException {
    List<String> jars = new ArrayList<>();
    String all =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
    for (String part : all.split(File.pathSeparator, -1)) {
      Path path = Path.of(part);
      if (!Files.isDirectory(path)) {
        jars.add(part);
      } else if (!Files.exists(path.resolve("lampwright/ServerClasses.class"))) {
        Path jar = folder.resolve(jars.size() + ".jar");
        int code =
            ToolProvider.findFirst("jar")
                .orElseThrow()
                .run(
                    System.err,
                    System.err,
                    "--create",
                    "--no-compress",
                    "--file",
                    jar.toString(),
                    "-C",
                    part,
                    ".");
        if (code != 0) {
          throw new IOException("No jar of " + part);
        }
        jars.add(jar.toString());
      }
    }
    return String.join(File.pathSeparator, jars);
  }

  /** How a server is called that finds its classes in the archive. */
  List<String> command() {
    return command("-XX:SharedArchiveFile=" + archive);
  }

  private List<String> command(String archiving) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        // It lives for seconds: its best compiler would cost more than it gives.
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        // Else each seventh of what this compiler may fill is a collection of all there is.
        "-XX:ReservedCodeCacheSize=240m",
        archiving,
        "-cp",
        classPath,
        "lampwright.Lampwright");
  }

  /** Puts what a server leaves behind that had a few setups of the demo where there is nothing. */
  void copyDataTo(Path there) throws IOException {
    try {
      int code =
          new ProcessBuilder("cp", "-a", data.toString(), there.toString())
              .inheritIO()
              .start()
              .waitFor();
      if (code != 0) {
        throw new IOException("No copy of " + data);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  private static void takeAway(Path folder) {
    try {
      ReachableFolder.delete(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
