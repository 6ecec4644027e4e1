package lampwright.browser;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.chrome.ChromeDriver;

/** Chromiums that wait for the next test class, which is spared a start; each as good as new. */
final class Browsers implements AutoCloseable {

  private final Map<String, Deque<ChromeDriver>> waiting = new HashMap<>();

  /** Those of the whole run. */
  static Browsers of(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(Browsers.class))
        .computeIfAbsent(Browsers.class, _ -> new Browsers(), Browsers.class);
  }

  synchronized Optional<ChromeDriver> take(String kind) {
    return Optional.ofNullable(waiting.getOrDefault(kind, new ArrayDeque<>()).poll());
  }

  synchronized void giveBack(String kind, ChromeDriver driver) {
    waiting.computeIfAbsent(kind, _ -> new ArrayDeque<>()).add(driver);
  }

  @Override
  public synchronized void close() {
    waiting.values().forEach(all -> all.forEach(ChromeDriver::quit));
    waiting.clear();
  }
}
