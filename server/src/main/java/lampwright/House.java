package lampwright;

import java.io.PrintStream;
import java.net.URI;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.Seal;
import lampwright.schema.WorkingDatabase;
import lampwright.store.Database;
import lampwright.tasks.DemoLoader;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.FactorSealing;
import lampwright.tasks.FirstOwner;
import lampwright.tasks.Passwords;
import lampwright.web.Routes;
import lampwright.web.http.CsrfTokens;
import lampwright.web.http.Door;
import lampwright.web.http.HostNames;
import lampwright.web.http.HttpServer;
import lampwright.web.http.Patience;
import lampwright.web.http.ServedRoute;
import lampwright.web.http.SessionCookie;

/**
 * The whole server on a database, each object built by hand; the tests start it too. What was
 * opened first is closed last.
 */
public final class House implements AutoCloseable {

  private static final String DEMO_FOLDER = "demo";

  /**
   * What it may take.
   *
   * @param connections with the database, at most
   * @param passwords at what cost they are looked at
   */
  record Means(int connections, Passwords passwords) {

    /** A server's. */
    static Means usual() {
      return new Means(Database.CONNECTIONS, new Passwords());
    }
  }

  private final Settings settings;
  private final PrintStream console;
  private final Clock clock;
  private final SecureRandom random = new SecureRandom();
  private final Deque<AutoCloseable> opened = new ArrayDeque<>();

  private final Watching watching;
  private final Database database;
  private final PeopleTasks people;
  private final Catalogue catalogue;
  private final HttpServer server;

  private House(
      Settings settings, WorkingDatabase where, Clock clock, PrintStream console, Means means) {
    this.settings = settings;
    this.console = console;
    this.clock = clock;
    try {
      watching = keep(new Watching(settings));
      database =
          keep(
              new Database(
                  new Database.Places(where, settings.replica().map(where::replica)),
                  means.connections(),
                  clock,
                  watching.databaseWatch()));
      Ids ids = new Ids(random);
      people =
          new PeopleTasks(
              database,
              ids,
              means.passwords(),
              DemoStudio.closed(settings.demo().isOpen()),
              seal(),
              clock);
      catalogue =
          keep(
              new Catalogue(
                  database,
                  new Catalogue.Choices(settings.data(), settings.pictures(), settings.byMeaning()),
                  ids,
                  clock));
      furnish();
      server = keep(serve());
    } catch (RuntimeException | Error e) {
      close();
      throw e;
    }
  }

  /**
   * Opens the server.
   *
   * @param where a database that has been migrated
   * @param console where it says how to come in
   * @throws lampwright.web.http.AddressUnusable when it cannot listen where the settings say
   */
  public static House open(
      Settings settings, WorkingDatabase where, Clock clock, PrintStream console) {
    return open(settings, where, clock, console, Means.usual());
  }

  /** The same with other means. */
  static House open(
      Settings settings, WorkingDatabase where, Clock clock, PrintStream console, Means means) {
    House house = new House(settings, where, clock, console, means);
    house.welcome();
    return house;
  }

  /** The port that it listens on. */
  public int port() {
    return server.port();
  }

  /** Everything that it answers to. */
  public List<ServedRoute> routes() {
    return server.routes();
  }

  private <T extends AutoCloseable> T keep(T room) {
    opened.push(room);
    return room;
  }

  /** The key that second factors are sealed under, which may be another than it was. */
  private Seal seal() {
    Seal seal = SealingKeyFile.open(settings, random);
    int otherwise = FactorSealing.sealAll(database, seal).otherwise();
    if (otherwise > 0) {
      console.println(
          "Second factors sealed under another key than that of %s: %d. Bring that key back; until then recovery codes let those people in, and their devices do not."
              .formatted(SealingKeyFile.path(settings), otherwise));
    }
    return seal;
  }

  /** Sees to it that somebody can come in. */
  private void furnish() {
    settings
        .firstOwner()
        .ifPresent(
            owner ->
                people
                    .firstOwner()
                    .ensure(
                        new FirstOwner.Wish(
                            "Studio", owner.name(), owner.email(), owner.password())));
    settings.demo().part().ifPresent(this::bringDemo);
  }

  private void bringDemo(DemoStudio.Part part) {
    DemoLoader loader =
        new DemoLoader(
            database, catalogue.importing(), clock, settings.data().resolve(DEMO_FOLDER));
    loader.load(
        people.demoStudio().ensure(loader.studioName(), settings.demoPassword()),
        part,
        console::println);
  }

  private HttpServer serve() {
    Door door =
        new Door(
            people.signingIn()::find,
            people.tokens()::find,
            database.replica().isPresent()
                ? Optional.of(
                    (way, secret, studio) ->
                        people.glancing().lookAround(way, secret, studio).caller())
                : Optional.empty(),
            people.studios()::mustMay,
            new SessionCookie(settings.isSecure()),
            new CsrfTokens(random));
    PageTools tools = PageTools.of(settings, door, people.studios(), catalogue.searchNews());
    PeopleRooms hall = new PeopleRooms(settings, people, catalogue, tools, clock);
    // Routes are looked for one after the other: those that are asked for most come first.
    List<Routes> rooms =
        new ArrayList<>(
            new WorkRooms(database, clock, catalogue, people, tools, hall.share(), random).all());
    rooms.addAll(
        List.of(
            hall.front(
                watching.health(database, catalogue),
                watching.metrics(database, catalogue, people)),
            hall.own(),
            hall.studios()));
    return HttpServer.start(
        new HttpServer.Place(
            settings.host(),
            settings.port(),
            settings.isSecure(),
            hostNames(),
            settings.isBehindProxy(),
            settings.certificate(),
            Patience.USUAL),
        door,
        hall.problemPage(),
        random,
        watching.traffic(),
        routes -> rooms.forEach(room -> room.addTo(routes)));
  }

  private HostNames hostNames() {
    List<String> names = new ArrayList<>(List.of(settings.host()));
    settings.publicUrl().map(URI::getHost).ifPresent(names::add);
    return new HostNames(names);
  }

  /** Says where to go, and how to come in. */
  private void welcome() {
    String address = address();
    console.println("Lampwright is open at " + address + "/");
    if (settings.demo().isOpen()) {
      console.println(
          "The demo studio: sign in as %s with the password %s"
              .formatted(
                  String.join(
                      ", ", DemoStudio.MEMBERS.stream().map(DemoStudio.DemoMember::email).toList()),
                  settings.demoPassword()));
    }
    if (!settings.demo().isOpen() && people.firstOwner().isMissing()) {
      console.println(
          "Nobody owns a studio here yet. This link makes its bearer the first owner; it works once and for 24 hours: %s/first-owner/%s"
              .formatted(address, people.firstOwner().invite()));
    }
  }

  private String address() {
    String shown = settings.host().contains(":") ? "[" + settings.host() + "]" : settings.host();
    return settings
        .publicUrl()
        .map(url -> url.toString().replaceAll("/$", ""))
        .orElseGet(() -> (settings.isSecure() ? "https://" : "http://") + shown + ":" + port());
  }

  /** Takes no more requests, finishes those that are there, and lets go of everything. */
  @Override
  public void close() {
    RuntimeException trouble = null;
    while (!opened.isEmpty()) {
      try {
        opened.pop().close();
      } catch (Exception e) {
        if (trouble == null) {
          trouble = new IllegalStateException("Could not close everything.", e);
        } else {
          trouble.addSuppressed(e);
        }
      }
    }
    if (trouble != null) {
      throw trouble;
    }
  }
}
