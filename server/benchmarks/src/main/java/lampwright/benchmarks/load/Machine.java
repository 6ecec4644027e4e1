package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.schema.WorkingDatabase;

/** A PostgreSQL, a generated catalogue in it, and the server on both as a process of its own. */
final class Machine implements AutoCloseable {

  private static final Duration READY = Duration.ofMinutes(30);
  private static final String FULL_TEXT =
      """
      create schema bare;
      create table bare.setup_text as
      select id, title, state,
        array(select jsonb_array_elements_text(document->'moods')) as moods,
        coalesce(document#>>'{occasion,place,name}', '') as place,
        coalesce(document#>>'{occasion,place,kind}', '') as kind,
        setweight(to_tsvector('english', title), 'A')
          || setweight(to_tsvector('english', coalesce(document->>'intent', '')), 'B')
          || setweight(jsonb_to_tsvector('english', document - 'title' - 'intent', '["string"]'), 'D')
          as words
      from lampwright.setup where deleted_at is null;
      alter table bare.setup_text add primary key (id);
      create index on bare.setup_text using gin (words);
      vacuum analyze;
      """;

  private final Path folder;
  private final Path log;
  private final EmbeddedPostgres postgres;
  private final GeneratedCatalogue.Facts facts;
  private final Run server;
  private final Duration toReady;
  private final double generatedInSeconds;

  private Machine(
      Path folder,
      Path log,
      EmbeddedPostgres postgres,
      GeneratedCatalogue.Facts facts,
      Run server,
      Duration toReady,
      double generatedInSeconds) {
    this.folder = folder;
    this.log = log;
    this.postgres = postgres;
    this.facts = facts;
    this.server = server;
    this.toReady = toReady;
    this.generatedInSeconds = generatedInSeconds;
  }

  /** Starts on what a folder holds, or generates it first. */
  static Machine start(
      Path folder, int setups, boolean byMeaning, List<String> options, PrintStream log)
      throws Exception {
    Files.createDirectories(folder);
    // PostgreSQL runs as a user of its own where this is root's.
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx--x--x"));
    EmbeddedPostgres postgres = EmbeddedPostgres.start(folder.resolve("database"));
    try {
      long began = System.nanoTime();
      WorkingDatabase where = WorkingDatabase.in(postgres);
      var found = GeneratedCatalogue.find(folder);
      GeneratedCatalogue.Facts facts;
      if (found.isPresent()) {
        facts = found.get();
      } else {
        log.printf("Generating %,d setups in %s%n", setups, folder);
        facts = GeneratedCatalogue.generate(folder, where, setups, byMeaning, log);
        execute(postgres, FULL_TEXT);
      }
      double generated = (System.nanoTime() - began) / 1e9;
      Path serverLog = folder.resolve("server.log");
      Files.deleteIfExists(serverLog);
      Run server =
          Run.server(
              serverLog,
              options,
              Map.of(
                  "LAMPWRIGHT_PORT", "0",
                  "LAMPWRIGHT_MEANING", Boolean.toString(byMeaning),
                  "LAMPWRIGHT_DATA", folder.resolve("data").toString(),
                  "LAMPWRIGHT_DATABASE_URL", url(postgres),
                  // One member asks for everybody here, and would soon be told to wait.
                  "LAMPWRIGHT_MEMBER_REQUESTS_PER_MINUTE", "0",
                  "LAMPWRIGHT_MEMBER_COSTLY_REQUESTS_PER_MINUTE", "0",
                  "LAMPWRIGHT_VISITOR_REQUESTS_PER_MINUTE", "0"));
      Duration toReady;
      try {
        toReady = server.awaitReady(READY);
      } catch (IOException | InterruptedException | RuntimeException e) {
        server.close();
        throw e;
      }
      return new Machine(folder, serverLog, postgres, facts, server, toReady, generated);
    } catch (Exception e) {
      postgres.close();
      throw e;
    }
  }

  private static String url(EmbeddedPostgres postgres) {
    return "postgresql://%s:%s@%s"
        .formatted(
            postgres.user(),
            postgres.password(),
            postgres.jdbcUrl(EmbeddedPostgres.DATABASE).replaceFirst("^jdbc:postgresql://", ""));
  }

  private static Connection connect(EmbeddedPostgres postgres) throws SQLException {
    return DriverManager.getConnection(
        postgres.jdbcUrl(EmbeddedPostgres.DATABASE), postgres.user(), postgres.password());
  }

  private static void execute(EmbeddedPostgres postgres, String script) throws SQLException {
    try (Connection connection = connect(postgres);
        Statement statement = connection.createStatement()) {
      for (String one : script.split(";\\s*\\n", -1)) {
        if (!one.isBlank()) {
          statement.execute(one);
        }
      }
    }
  }

  /**
   * Ends the statements of PostgreSQL's full text that go on though whoever asked has left: they
   * would take the processor from what is measured next.
   */
  void endWhatNobodyWaitsFor() throws SQLException {
    var _ =
        number(
            "select count(pg_cancel_backend(pid)) from pg_stat_activity where state = 'active' and"
                + " pid <> pg_backend_pid() and query like '%bare.setup_text%'");
  }

  /** A number that the database knows. */
  long number(String select) throws SQLException {
    try (Connection connection = connect(postgres);
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(select)) {
      found.next();
      return found.getLong(1);
    }
  }

  /** What the server is compared with, on the same database. */
  Run bare() throws IOException {
    return Run.start(
        log.resolveSibling("bare.log"),
        List.of(),
        Map.of(
            "BARE_JDBC", postgres.jdbcUrl(EmbeddedPostgres.DATABASE),
            "BARE_USER", postgres.user(),
            "BARE_PASSWORD", postgres.password()),
        BareServer.class.getName(),
        "Bare at ");
  }

  /** What the database's processes have worked so far, those that have ended left out. */
  Duration databaseWorked() {
    return ProcessHandle.of(postgres.pid()).stream()
        .flatMap(first -> Stream.concat(Stream.of(first), first.descendants()))
        .map(Footprint::worked)
        .reduce(Duration.ZERO, Duration::plus);
  }

  GeneratedCatalogue.Facts facts() {
    return facts;
  }

  Run server() {
    return server;
  }

  Path index() {
    return folder.resolve("data").resolve("index");
  }

  Path folder() {
    return folder;
  }

  /** From the server's saying where it is open to its being ready: the index, if it was built. */
  Duration toReady() {
    return toReady;
  }

  double generatedInSeconds() {
    return generatedInSeconds;
  }

  @Override
  public void close() {
    server.close();
    postgres.close();
  }
}
