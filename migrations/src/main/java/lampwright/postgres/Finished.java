package lampwright.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** A short program that has ended: its exit status and what it wrote. */
record Finished(int status, String output) {

  static Finished of(ProcessBuilder builder) throws IOException {
    Process process = builder.redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      return new Finished(process.waitFor(), output);
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while waiting for " + builder.command().getFirst(), e);
    }
  }

  boolean succeeded() {
    return status == 0;
  }
}
