package lampwright.backup;

import java.io.PrintStream;
import java.time.Duration;
import java.util.function.Supplier;

/** What a person at the terminal is told while it takes time: a line every few seconds at most. */
public final class Progress {

  private static final long BETWEEN_LINES = Duration.ofSeconds(2).toNanos();

  private final PrintStream console;
  private long lastLineAt = System.nanoTime();

  public Progress(PrintStream console) {
    this.console = console;
  }

  /** Says how far it is, where nothing was said for a while. */
  void tell(Supplier<String> line) {
    long now = System.nanoTime();
    if (now - lastLineAt >= BETWEEN_LINES) {
      lastLineAt = now;
      console.println(line.get());
    }
  }

  /** Says it in any case. */
  public void say(String line) {
    lastLineAt = System.nanoTime();
    console.println(line);
  }
}
