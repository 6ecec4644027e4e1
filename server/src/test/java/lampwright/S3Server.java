package lampwright;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A store that speaks S3 (s3proxy, which checks signatures), as a process of its own with files in
 * a folder; it can be killed and started again on the same port.
 */
final class S3Server implements AutoCloseable {

  static final String BUCKET = "pictures";

  private static final Path PROGRAM = Path.of("target", "s3-server", "s3-server.jar");
  private static final int PATIENCE_SECONDS = 60;
  private static final String KEY_ID = "light-keeper";
  private static final String KEY = "a key for the tests alone";

  private final Path top;
  private final int port;
  private Process process;

  private S3Server(Path top, int port, Process process) {
    this.top = top;
    this.port = port;
    this.process = process;
  }

  /** Starts one with an empty bucket. */
  static S3Server start() {
    try {
      Path top = Files.createTempDirectory("lampwright-s3");
      Files.createDirectories(top.resolve("files").resolve(BUCKET));
      int port;
      try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        port = free.getLocalPort();
      }
      Files.writeString(
          top.resolve("s3proxy.conf"),
          """
          s3proxy.endpoint=http://127.0.0.1:%d
          s3proxy.authorization=aws-v4
          s3proxy.identity=%s
          s3proxy.credential=%s
          jclouds.provider=filesystem-nio2
          jclouds.filesystem.basedir=%s
          """
              .formatted(port, KEY_ID, KEY, top.resolve("files")));
      Files.writeString(top.resolve("key"), KEY_ID + "\n" + KEY + "\n");
      S3Server server = new S3Server(top, port, launch(top));
      server.awaitOpen();
      return server;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Process launch(Path top) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-jar",
            PROGRAM.toAbsolutePath().toString(),
            "--properties",
            top.resolve("s3proxy.conf").toString())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(top.resolve("log").toFile()))
        .start();
  }

  private void awaitOpen() throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!isOpen()) {
      if (!process.isAlive() || System.nanoTime() > end) {
        throw new IllegalStateException(
            "The store does not open: " + Files.readString(top.resolve("log")));
      }
      Thread.onSpinWait();
    }
  }

  private boolean isOpen() {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      return socket.isConnected();
    } catch (IOException e) {
      return false;
    }
  }

  /** The settings of a server that keeps its pictures under a prefix of the bucket. */
  Map<String, String> settings(String prefix) {
    Map<String, String> settings = new HashMap<>();
    settings.put("LAMPWRIGHT_PICTURES", "s3://" + BUCKET + "/" + prefix);
    settings.put("LAMPWRIGHT_S3_ENDPOINT", "http://127.0.0.1:" + port);
    settings.put("LAMPWRIGHT_S3_KEY_FILE", top.resolve("key").toString());
    return settings;
  }

  /** Where it keeps the objects under a prefix, each a file of the key's name. */
  Path folder(String prefix) {
    return top.resolve("files").resolve(BUCKET).resolve(prefix);
  }

  /** The objects there are under a prefix. */
  List<String> keys(String prefix) throws IOException {
    if (!Files.exists(folder(prefix))) {
      return List.of();
    }
    try (Stream<Path> tree = Files.walk(folder(prefix))) {
      return tree.filter(Files::isRegularFile)
          .map(file -> folder("").relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  /** Ends it as kill -9 does. */
  void kill() {
    process.destroyForcibly().onExit().join();
  }

  /** Starts it again with what it had. */
  void startAgain() throws IOException {
    process = launch(top);
    awaitOpen();
  }

  @Override
  public void close() throws IOException {
    kill();
    try (Stream<Path> tree = Files.walk(top)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
