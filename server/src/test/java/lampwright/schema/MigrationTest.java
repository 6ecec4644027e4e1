package lampwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A database that was filled at an older version keeps all that it holds when it is migrated.
 *
 * <p>So that later migrations are covered, add a file for the newest version: a few rows in every
 * table, {@code src/test/resources/lampwright/filled/V<n>.sql}, best begun from the one before, and
 * its number beside the others here. Files of older versions stay as they are.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MigrationTest {

  /** A database that was filled at an older version and is migrated now, and what it held then. */
  private record Migrated(
      String database,
      WorkingDatabase opened,
      Map<String, String> columns,
      Map<String, String> before) {}

  private PostgresForTests postgres;

  /** Each older version's tables without a row; the next version's are made from them. */
  private final NavigableMap<Integer, String> empty = new TreeMap<>();

  private final Map<Integer, Migrated> migrated = new HashMap<>();

  @BeforeAll
  void start() throws IOException {
    postgres = PostgresForTests.start();
  }

  @AfterAll
  void stop() throws IOException {
    postgres.close();
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 8, 10, 12, 13, 15, 16, 17, 18, 19, 25})
  void everythingThatAnOlderVersionHeldIsStillThere(int version) throws Exception {
    Migrated now = migrated(version);
    now.before().forEach((table, held) -> assertNotEquals("[]", held, table + " has no row"));
    try (Rows rows = postgres.asSuperuser(now.database())) {
      assertEquals(now.before(), contents(rows, now.columns()));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 8, 10, 12, 13, 15, 16, 17, 18, 19, 25})
  void whatWasThereIsReadableByTheServerInItsStudio(int version) throws Exception {
    try (Rows rows = Rows.as(migrated(version).opened())) {
      assertEquals("0", rows.one("select count(*) from lampwright.setup"));
      rows.run("set lampwright.studio = 'quay'");
      assertEquals(
          List.of("Gone again", "Knot", "Rope in the rain"),
          rows.column(
              "select title from lampwright.setup where id in ('rope', 'knot', 'gone') order by"
                  + " 1"));
      assertEquals(
          "It rained.",
          rows.one(
              "select message from lampwright.setup_revision where setup_id = 'rope' and revision ="
                  + " 2"));
      assertEquals("1", rows.one("select parent_revision from lampwright.setup where id = 'knot'"));
    }
  }

  @Test
  void whatWasThereBeforeThereWereDraftsIsProvenAndWhatComesIsADraft() throws Exception {
    String database = filled(2);
    WorkingDatabase.at(postgres.url(database));
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals(
          List.of("proven false"),
          rows.column("select distinct state || ' ' || archived from lampwright.setup"));
      assertEquals(
          List.of("proven false"),
          rows.column("select distinct state || ' ' || archived from lampwright.setup_revision"));
      rows.run(
          "insert into lampwright.setup (studio_id, id, revision, title, document, created_at,"
              + " created_by, changed_at, changed_by) values"
              + " ('quay', 'new1', 1, 'New', '{}', now(), 'imke', now(), 'imke')");
      assertEquals("draft", rows.one("select state from lampwright.setup where id = 'new1'"));
    }
  }

  @Test
  void whoWasThereBeforeAnybodyCouldChooseReadsAsUsual() throws Exception {
    String database = filled(15);
    WorkingDatabase.at(postgres.url(database));
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals(
          List.of("metres tenths 1"),
          rows.column(
              "select distinct lengths || ' ' || stop_fraction || ' ' || preferences_revision"
                  + " from lampwright.person where language is null"));
      assertEquals(
          "0", rows.one("select count(*) from lampwright.person where language is not null"));
    }
  }

  /** The database of a version, which no test may change. */
  private Migrated migrated(int version) throws SQLException, IOException {
    Migrated known = migrated.get(version);
    if (known == null) {
      String database = filled(version);
      try (Rows rows = postgres.asSuperuser(database)) {
        Map<String, String> columns = columns(rows);
        Map<String, String> before = contents(rows, columns);
        WorkingDatabase opened = WorkingDatabase.at(postgres.url(database));
        known = new Migrated(database, opened, columns, before);
      }
      migrated.put(version, known);
    }
    return known;
  }

  /** A new database of a version, with that version's rows in it. */
  private String filled(int version) throws SQLException, IOException {
    String database = postgres.copyOf(emptyAt(version));
    String file = "/lampwright/filled/V" + version + ".sql";
    try (InputStream in = MigrationTest.class.getResourceAsStream(file);
        Rows rows = postgres.asSuperuser(database)) {
      if (in == null) {
        throw new IllegalStateException("Missing: " + file);
      }
      rows.run(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    return database;
  }

  private String emptyAt(int version) throws SQLException {
    Map.Entry<Integer, String> older = empty.floorEntry(version);
    if (older != null && older.getKey() == version) {
      return older.getValue();
    }
    String database = older == null ? postgres.newDatabase() : postgres.copyOf(older.getValue());
    Flyway.configure(Migrations.class.getClassLoader())
        .dataSource(postgres.jdbcUrl(database), postgres.superuser(), postgres.password())
        .locations("classpath:" + Migrations.LOCATION)
        .defaultSchema(Migrations.SCHEMA)
        .createSchemas(true)
        .target(String.valueOf(version))
        .loggers("slf4j")
        .load()
        .migrate();
    empty.put(version, database);
    return database;
  }

  /** Each table with its columns as they are now. */
  private static Map<String, String> columns(Rows rows) throws SQLException {
    Map<String, String> columns = new TreeMap<>();
    for (String table :
        rows.column(
            "select table_name from information_schema.tables where table_schema = 'lampwright'"
                + " and table_type = 'BASE TABLE' and table_name not like 'flyway%'")) {
      columns.put(
          table,
          rows.one(
              "select string_agg(column_name, ', ' order by ordinal_position)"
                  + " from information_schema.columns where table_schema = 'lampwright'"
                  + " and table_name = '"
                  + table
                  + "'"));
    }
    return columns;
  }

  /** What each table holds in these columns, as JSON in one order. */
  private static Map<String, String> contents(Rows rows, Map<String, String> columns)
      throws SQLException {
    Map<String, String> contents = new TreeMap<>();
    for (Map.Entry<String, String> table : columns.entrySet()) {
      contents.put(
          table.getKey(),
          rows.one(
              "select coalesce(json_agg(row_to_json(t) order by row_to_json(t)::text), '[]')"
                  + " from (select %s from lampwright.%s) t"
                      .formatted(table.getValue(), table.getKey())));
    }
    return contents;
  }
}
