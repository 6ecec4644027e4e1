package lampwright.browser;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.ElementClickInterceptedException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.chromium.ChromiumNetworkConditions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.PointerInput.Origin;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real Chromium for a test class; without one on the machine its tests are skipped. */
final class Browser implements BeforeAllCallback, AfterAllCallback {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

  /** The same without the parts that draw a window of its own, for half of the work. */
  private static final Path WINDOWLESS = Path.of("/usr/lib/chromium/chromium-headless-shell");

  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  /** And until it stays there: a page whose type has just come moves once more. */
  private static final String TO_THE_MIDDLE =
      """
      const [control, done] = arguments;
      document.fonts.ready.then(() => {
        control.scrollIntoView({ block: "center", behavior: "instant" });
        let before;
        const settle = () => {
          const { x, y } = control.getBoundingClientRect();
          if (before && before.x === x && before.y === y) {
            done();
          } else {
            before = { x, y };
            requestAnimationFrame(settle);
          }
        };
        settle();
      });
      """;

  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final int width;
  private final int height;
  private final boolean keeps;
  private @Nullable ChromeDriver driver;
  private @Nullable Path profile;

  /** Whose pages it has opened, and who may have kept something in it. */
  private final Set<String> origins = new TreeSet<>();

  private Browser(int width, int height, boolean keeps) {
    this.width = width;
    this.height = height;
    this.keeps = keeps;
  }

  static Browser desktop() {
    return new Browser(1280, 900, false);
  }

  static Browser phone() {
    return new Browser(390, 844, false);
  }

  static Browser smallPhone() {
    return new Browser(360, 740, false);
  }

  /** One that can be killed, and knows what it kept when it begins again. */
  static Browser smallPhoneThatKeeps() {
    return new Browser(360, 740, true);
  }

  @Override
  public void beforeAll(ExtensionContext context) throws IOException {
    assumeTrue(
        Files.isExecutable(binary()) && Files.isExecutable(DRIVER),
        "No Chromium here: apt-get install chromium chromium-headless-shell chromium-driver");
    if (keeps) {
      profile = Files.createTempDirectory("lampwright-browser");
    }
    Optional<ChromeDriver> waiting = keeps ? Optional.empty() : Browsers.of(context).take(kind());
    if (waiting.isPresent()) {
      driver = waiting.get();
    } else {
      begin();
    }
  }

  private String kind() {
    return width + " x " + height;
  }

  /** What has no window has no profile that it could be given either. */
  private Path binary() {
    return keeps || !Files.isExecutable(WINDOWLESS) ? CHROMIUM : WINDOWLESS;
  }

  /** Starts it, with what it kept where it was killed before. */
  void begin() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(binary().toFile());
    options.addArguments(
        List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-dev-shm-usage"));
    if (profile != null) {
      options.addArguments("--user-data-dir=" + profile);
    }
    // A window has a least width; an emulated device has the size that it is given.
    options.setExperimentalOption(
        "mobileEmulation",
        Map.of(
            "deviceMetrics",
            Map.of(
                "width",
                width,
                "height",
                height,
                "pixelRatio",
                1.0,
                "mobile",
                width < 600,
                "touch",
                width < 600)));
    LoggingPreferences logging = new LoggingPreferences();
    logging.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logging);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(DRIVER.toString()))
            .usingAnyFreePort()
            .withSilent(true)
            .build();
    driver = new ChromeDriver(service, options);
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    if (driver != null && (keeps || !isAsNew())) {
      driver.quit();
    } else if (driver != null) {
      Browsers.of(context).giveBack(kind(), driver);
    }
    driver = null;
    if (profile != null) {
      try (Stream<Path> tree = Files.walk(profile)) {
        for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(path);
        }
      }
    }
  }

  /** Takes away what the class has left in it; an empty tab is all that the next one finds. */
  private boolean isAsNew() {
    try {
      connect(true);
      for (String origin : origins) {
        forget(origin);
      }
      driver().executeCdpCommand("Network.clearBrowserCookies", Map.of());
      driver().executeCdpCommand("Network.clearBrowserCache", Map.of());
      Set<String> left = driver().getWindowHandles();
      String next = openTab();
      for (String tab : left) {
        go(tab);
        closeFor(next);
      }
      complaints();
      origins.clear();
      return true;
    } catch (WebDriverException _) {
      return false;
    }
  }

  /** Kills it with all its processes, as a phone does that has no memory left. */
  void kill() {
    String own = "--user-data-dir=" + profile;
    for (ProcessHandle process : ProcessHandle.current().descendants().toList()) {
      if (process.info().commandLine().filter(line -> line.contains(own)).isPresent()) {
        process.destroyForcibly();
      }
    }
    try {
      driver().quit();
    } catch (WebDriverException _) {
      // There is nobody to say goodbye to.
    }
  }

  private ChromeDriver driver() {
    if (driver == null) {
      throw new IllegalStateException("Register the Browser as a static extension.");
    }
    return driver;
  }

  void open(String address) {
    origins.add(originOf(address));
    driver().get(address);
  }

  private static String originOf(String address) {
    return address.replaceFirst("(//[^/]+).*", "$1");
  }

  /** The element, as soon as it is there and can be seen. */
  WebElement see(String css) {
    return new WebDriverWait(driver(), PATIENCE)
        .withMessage(this::shown)
        .until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(css)));
  }

  List<WebElement> all(String css) {
    return driver().findElements(By.cssSelector(css));
  }

  /** Clicks where it is in the middle of the window, as a person would have it before tapping. */
  void press(WebElement control) {
    press(() -> control, ElementClickInterceptedException.class);
  }

  /** The same of what its page may draw anew at any moment. */
  void press(String css) {
    press(() -> see(css), StaleElementReferenceException.class);
  }

  /** What has just come may move once more under the finger; a person taps again. */
  private void press(Supplier<WebElement> control, Class<? extends WebDriverException> again) {
    new WebDriverWait(driver(), PATIENCE, Duration.ofMillis(25))
        .ignoring(ElementClickInterceptedException.class, again)
        .withMessage(this::shown)
        .until(
            _ -> {
              WebElement there = control.get();
              driver().executeAsyncScript(TO_THE_MIDDLE, there);
              there.click();
              return true;
            });
  }

  /** Follows a link or sends a form, and waits until another page has come. */
  void follow(WebElement control) {
    driver().executeScript("window.leaving = true");
    press(control);
    new WebDriverWait(driver(), PATIENCE)
        .ignoring(WebDriverException.class)
        .until(
            browser ->
                Boolean.TRUE.equals(
                    driver()
                        .executeScript(
                            "return !window.leaving && document.readyState === 'complete'")));
  }

  /** Drags something by so many pixels, with a mouse or on a phone with a finger. */
  void drag(WebElement what, int right, int down) {
    driver()
        .executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", what);
    PointerInput.Kind kind = width < 600 ? PointerInput.Kind.TOUCH : PointerInput.Kind.MOUSE;
    PointerInput pointer = new PointerInput(kind, "hand");
    Duration step = Duration.ofMillis(16);
    Sequence way = new Sequence(pointer, 0);
    way.addAction(pointer.createPointerMove(step, Origin.fromElement(what), 0, 0));
    way.addAction(pointer.createPointerDown(PointerInput.MouseButton.LEFT.asArg()));
    for (int share = 1; share <= 4; share++) {
      way.addAction(
          pointer.createPointerMove(
              step,
              Origin.pointer(),
              right * share / 4 - right * (share - 1) / 4,
              down * share / 4 - down * (share - 1) / 4));
    }
    way.addAction(pointer.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
    driver().perform(List.of(way));
  }

  /** Presses keys where the focus is. */
  void type(CharSequence... keys) {
    driver().switchTo().activeElement().sendKeys(keys);
  }

  /** Presses keys together, such as Control and Z, where the focus is. */
  void chord(CharSequence... keys) {
    type(Keys.chord(keys));
  }

  WebElement focused() {
    return driver().switchTo().activeElement();
  }

  /** Waits until something is so. */
  void await(BooleanSupplier fact) {
    new WebDriverWait(driver(), PATIENCE, Duration.ofMillis(25))
        .ignoring(StaleElementReferenceException.class)
        .withMessage(this::shown)
        .until(ignored -> fact.getAsBoolean());
  }

  /** What a person would see and what the browser complains of, for the failure of a test. */
  private String shown() {
    return address()
        + "\n"
        + driver().findElement(By.tagName("body")).getText()
        + "\n"
        + String.join("\n", complaints());
  }

  /** Closes the tab as a crash or a thumb does, without a question, and opens an empty one. */
  void loseTheTab() {
    String lost = driver().getWindowHandle();
    String next = driver().switchTo().newWindow(WindowType.TAB).getWindowHandle();
    driver().switchTo().window(lost);
    driver().close();
    driver().switchTo().window(next);
  }

  /** The tab that is worked in. */
  String tab() {
    return driver().getWindowHandle();
  }

  /** Opens one more tab and works in it. */
  String openTab() {
    return driver().switchTo().newWindow(WindowType.TAB).getWindowHandle();
  }

  /** Works in another tab. */
  void go(String tab) {
    driver().switchTo().window(tab);
  }

  /** Closes the tab that is worked in and goes to another. */
  void closeFor(String tab) {
    driver().close();
    go(tab);
  }

  /** Takes the network away, or gives it back. */
  void connect(boolean isThere) {
    if (isThere) {
      driver().deleteNetworkConditions();
    } else {
      ChromiumNetworkConditions none = new ChromiumNetworkConditions();
      none.setOffline(true);
      driver().setNetworkConditions(none);
    }
  }

  String title() {
    return driver().getTitle();
  }

  String address() {
    return driver().getCurrentUrl();
  }

  /** By how many pixels the page is wider than the window. */
  long overflow() {
    Object pixels =
        driver()
            .executeScript(
                "return document.documentElement.scrollWidth"
                    + " - document.documentElement.clientWidth");
    return pixels instanceof Long wide ? wide : 0;
  }

  /** Makes the window as tall as its page, so that what sticks to its edge lies over nothing. */
  void showWhole() {
    Object tall = driver().executeScript("return document.documentElement.scrollHeight");
    show(tall instanceof Long pixels ? pixels : height);
  }

  /** Gives the window its own size again. */
  void showUsual() {
    show(height);
  }

  private void show(long tall) {
    driver()
        .executeCdpCommand(
            "Emulation.setDeviceMetricsOverride",
            Map.of("width", width, "height", tall, "deviceScaleFactor", 1, "mobile", width < 600));
  }

  /** Every address that the page has loaded something from. */
  List<String> loadedFrom() {
    Object names =
        driver()
            .executeScript(
                "return performance.getEntriesByType('resource').map(entry => entry.name)");
    return names instanceof List<?> list ? list.stream().map(String::valueOf).toList() : List.of();
  }

  /** What the browser complained of since it was asked last. */
  List<String> complaints() {
    return driver().manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::toString)
        .toList();
  }

  /** Runs a script of the test's own. */
  void run(String script) {
    driver().executeScript(script);
  }

  /** Runs a script and gives the list that it returns, after its promise. */
  List<String> list(String script, Object... arguments) {
    return driver().executeScript(script, arguments) instanceof List<?> list
        ? list.stream().map(String::valueOf).toList()
        : List.of();
  }

  /** Forgets all that the site of its page keeps in it. */
  void forget() {
    forget(originOf(address()));
  }

  private void forget(String origin) {
    driver()
        .executeCdpCommand(
            "Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
  }

  /** Forgets who has signed in. */
  void loseCookies() {
    driver().manage().deleteAllCookies();
  }

  /** Lets the browser be somebody who has signed in already. */
  void takeCookie(String name, String value) {
    driver().manage().addCookie(new Cookie(name, value));
  }
}
