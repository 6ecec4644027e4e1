package lampwright.store;

import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import lampwright.people.Asker;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.schema.WorkingDatabase;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A migrated, empty database for one test class, in the one PostgreSQL of the run:
 *
 * <pre>{@code
 * @RegisterExtension static final TestDatabase database = new TestDatabase();
 * }</pre>
 */
public final class TestDatabase implements BeforeAllCallback, AfterAllCallback {

  private final Clock clock;
  private final Ids ids = new Ids(new SecureRandom());
  private @Nullable TestServer server;
  private @Nullable WorkingDatabase where;
  private @Nullable Database database;

  public TestDatabase() {
    this(Clock.systemUTC());
  }

  public TestDatabase(Clock clock) {
    this.clock = clock;
  }

  @Override
  public void beforeAll(ExtensionContext context) throws SQLException {
    server = server(context);
    open(server.copy());
  }

  /** As another that nobody is connected to, in place of an empty one. */
  public void copy(ExtensionContext context, TestDatabase other) throws SQLException {
    server = server(context);
    open(server.copyOf(other.where()));
  }

  private static TestServer server(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(TestServer.class))
        .computeIfAbsent(TestServer.class, _ -> TestServer.start(), TestServer.class);
  }

  private void open(WorkingDatabase here) {
    where = here;
    database = new Database(here, 4, clock);
  }

  @Override
  public void afterAll(ExtensionContext context) {
    close();
  }

  /** Lets go of its connections. */
  public void close() {
    open().close();
  }

  /** The store, with four connections. */
  public Database open() {
    return here(database);
  }

  /** Where it is, for whoever wants a store of their own. */
  public WorkingDatabase where() {
    return here(where);
  }

  /** The address that a server's settings name it by, as its owner. */
  public String ownerUrl() {
    return here(server).ownerUrl(where().jdbcUrl());
  }

  /** Ids that nobody else has. */
  public Ids ids() {
    return ids;
  }

  /** Somebody new. */
  public PersonId newPerson() {
    PersonId person = new PersonId(ids.next());
    open()
        .anonymous(
            in -> new People(in).create(person, person + "@demo.example", "Person", "no hash"));
    return person;
  }

  /** A new studio, owned by a person. */
  public StudioId newStudio(PersonId owner) {
    StudioId studio = new StudioId(ids.next());
    open().anonymous(in -> new Members(in.enter(studio, owner)).found("Studio " + studio));
    return studio;
  }

  /** Makes a person a member. */
  public void join(StudioId studio, PersonId owner, PersonId person, Role role) {
    open().inStudio(studio, Asker.whole(owner), in -> new Members(in).add(person, role));
  }

  /** Plain SQL as the role that the server works as; the first column of the last statement. */
  public List<String> sql(String... statements) throws SQLException {
    WorkingDatabase here = where();
    try (Connection connection =
        DriverManager.getConnection(here.jdbcUrl(), here.user(), here.password())) {
      return run(connection, statements);
    }
  }

  /** The same as the superuser, whom row-level security does not bind. */
  public List<String> sqlAsSuperuser(String... statements) throws SQLException {
    try (Connection connection = here(server).superuser(TestServer.nameOf(where()))) {
      return run(connection, statements);
    }
  }

  private static List<String> run(Connection connection, String... statements) throws SQLException {
    List<String> column = new ArrayList<>();
    try (Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        column.clear();
        if (statement.execute(sql)) {
          ResultSet rows = statement.getResultSet();
          while (rows.next()) {
            column.add(String.valueOf(rows.getString(1)));
          }
        }
      }
    }
    return column;
  }

  private static <T> T here(@Nullable T part) {
    if (part == null) {
      throw new IllegalStateException("Register the TestDatabase as a static extension.");
    }
    return part;
  }
}
