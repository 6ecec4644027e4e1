package lampwright;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lampwright.people.SecretHash;
import lampwright.store.People;
import lampwright.store.Sessions;
import lampwright.store.TestDatabase;
import lampwright.tasks.Passwords;
import lampwright.web.http.CsrfTokens;
import lampwright.web.http.ServedRoute;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The whole server for one test class, on a free loopback port, with a database of its own:
 *
 * <pre>{@code
 * @RegisterExtension static final TestHouse house = TestHouse.withDemo();
 * }</pre>
 */
public final class TestHouse implements BeforeAllCallback, AfterAllCallback, AutoCloseable {

  /** The password of the demo's members. */
  public static final String PASSWORD = "a password for the tests";

  private static final Map<String, String> DEMO =
      Map.of("LAMPWRIGHT_DEMO", "few", "LAMPWRIGHT_DEMO_PASSWORD", PASSWORD);

  /** Less than a server's: a hundred houses are opened one after the other. */
  private static final House.Means MEANS = new House.Means(8, new Passwords(64, 1));

  private final Map<String, String> environment;
  private final boolean isCopy;
  private final House.Means means;
  private final TestDatabase database = new TestDatabase();
  private final ByteArrayOutputStream console = new ByteArrayOutputStream();
  private @Nullable Path data;
  private @Nullable House house;
  private @Nullable Visitor stranger;
  private int strangersPort;

  private TestHouse(Map<String, String> environment, boolean isCopy, House.Means means) {
    this.environment = environment;
    this.isCopy = isCopy;
    this.means = means;
  }

  /** With a few setups and kits of the demo studio in it, which come in once for all tests. */
  public static TestHouse withDemo() {
    return new TestHouse(DEMO, true, MEANS);
  }

  /** The same with a single connection with the database. */
  public static TestHouse withDemoAndOneConnection() {
    return new TestHouse(DEMO, true, new House.Means(1, MEANS.passwords()));
  }

  /** With some settings. */
  public static TestHouse with(Map<String, String> settings) {
    return new TestHouse(settings, false, MEANS);
  }

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    data = Files.createTempDirectory("lampwright-house");
    if (isCopy) {
      TestHouse furnished =
          context
              .getRoot()
              .getStore(ExtensionContext.Namespace.create(TestHouse.class))
              .computeIfAbsent(DEMO, _ -> furnished(context), TestHouse.class);
      database.copy(context, furnished.database);
      copy(furnished.data(), data);
    } else {
      database.beforeAll(context);
    }
    open();
  }

  /** One that has been open, for others to be like it. */
  private static TestHouse furnished(ExtensionContext context) {
    TestHouse furnished = with(DEMO);
    try {
      furnished.beforeAll(context);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
    there(furnished.house).close();
    furnished.house = null;
    furnished.database.close();
    return furnished;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> tree = Files.walk(from)) {
      for (Path path : tree.toList()) {
        Path copy = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(path, copy);
        }
      }
    }
  }

  private void open() {
    open(environment);
  }

  private void open(Map<String, String> settings) {
    Map<String, String> all = new TreeMap<>(settings);
    all.put("LAMPWRIGHT_PORT", "0");
    // To load the model takes a second; whoever tests it says so.
    all.putIfAbsent("LAMPWRIGHT_MEANING", "false");
    all.putIfAbsent("LAMPWRIGHT_DRAIN_SECONDS", "0");
    // Some tests ask for everything there is, as one person.
    all.putIfAbsent("LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE", "0");
    all.putIfAbsent("LAMPWRIGHT_MEMBER_COSTLY_REQUESTS_PER_MINUTE", "0");
    all.putIfAbsent("LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE", "0");
    all.put("LAMPWRIGHT_DATA", there(data).toString());
    house =
        House.open(
            Settings.read(all),
            database.where(),
            Clock.systemUTC(),
            new PrintStream(console, true, StandardCharsets.UTF_8),
            means);
  }

  /** Closes it and opens it again on the same data. */
  public void reopen() {
    there(house).close();
    open();
  }

  /** Closes it, lets something be done to what it keeps, and opens it again. */
  public void reopenAfter(ThingDone thing) throws IOException {
    there(house).close();
    thing.isDone();
    open();
  }

  /** What is done to a house while it is closed. */
  public interface ThingDone {
    void isDone() throws IOException;
  }

  /** The same with another answer to what becomes of the demo. */
  public void reopen(String demo) {
    there(house).close();
    Map<String, String> other = new TreeMap<>(environment);
    other.put("LAMPWRIGHT_DEMO", demo);
    open(other);
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    close();
  }

  /** Closes it where it outlives its class. */
  @Override
  public void close() throws IOException {
    if (house != null) {
      house.close();
      database.close();
    }
    try (Stream<Path> tree = Files.walk(there(data))) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  public int port() {
    return there(house).port();
  }

  /** Everything that it answers to. */
  public List<ServedRoute> routes() {
    return there(house).routes();
  }

  /** The folder of everything that it keeps. */
  public Path data() {
    return there(data);
  }

  /** The database under it. */
  public TestDatabase database() {
    return database;
  }

  /** What it said on its console. */
  public String console() {
    return console.toString(StandardCharsets.UTF_8);
  }

  /**
   * Somebody who is not signed in. All who visit one house share their connections, of which one
   * address may have only so many.
   */
  public synchronized Visitor visitor() {
    Visitor known = stranger;
    if (known == null || strangersPort != port()) {
      strangersPort = port();
      known = new Visitor(URI.create("http://127.0.0.1:" + strangersPort));
      stranger = known;
    }
    return known;
  }

  /**
   * A member of the demo studio with a session, who proves their changes. It begins without their
   * password, whose looking at is slow on purpose; {@link #signedInByPassword} is the way through
   * the door.
   */
  public Visitor signedIn(String email) {
    String secret = database.ids().nextSecret();
    database
        .open()
        .anonymous(
            in ->
                new Sessions(in)
                    .begin(
                        database.ids().next(),
                        new People(in).findByEmail(email).orElseThrow().person().id(),
                        SecretHash.of(secret),
                        "a test",
                        in.now().plus(Duration.ofDays(1))));
    return visitor()
        .with("Cookie", "lampwright_session=" + secret)
        .with("X-CSRF-Token", new CsrfTokens(new SecureRandom()).of(secret));
  }

  /** A member of the demo studio who came through the door with their password. */
  public Visitor signedInByPassword(String email) {
    HttpResponse<String> answer = signIn(email, PASSWORD);
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    return visitor()
        .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
        .with("X-CSRF-Token", String.valueOf(Visitor.object(answer).get("csrf_token")));
  }

  /** A member of the demo studio by a token, as a program comes. */
  public Visitor withToken(String email) {
    HttpResponse<String> made = signedIn(email).post("/api/tokens", "{\"name\":\"a test\"}");
    return visitor().with("Authorization", "Bearer " + Visitor.object(made).get("token"));
  }

  /** Tries to sign in. */
  public HttpResponse<String> signIn(String email, String password) {
    return visitor()
        .post("/api/session", "{\"email\":\"%s\",\"password\":\"%s\"}".formatted(email, password));
  }

  private static <T> T there(@Nullable T part) {
    if (part == null) {
      throw new IllegalStateException("Register the TestHouse as a static extension.");
    }
    return part;
  }
}
