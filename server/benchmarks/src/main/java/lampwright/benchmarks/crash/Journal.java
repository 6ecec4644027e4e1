package lampwright.benchmarks.crash;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;

/**
 * What one client sent and what was acknowledged, a line each, on the disk before the client goes
 * on: so that a failure can be read afterwards, whatever ended.
 */
final class Journal implements AutoCloseable {

  private final FileChannel file;

  Journal(Path path) throws IOException {
    file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  void write(String line) {
    try {
      file.write(
          ByteBuffer.wrap((Instant.now() + " " + line + "\n").getBytes(StandardCharsets.UTF_8)));
      file.force(false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
