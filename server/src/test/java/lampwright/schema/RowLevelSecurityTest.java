package lampwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What PostgreSQL keeps apart even where our code would forget to. */
class RowLevelSecurityTest {

  private static PostgresForTests postgres;
  private static String database;
  private static WorkingDatabase working;

  @BeforeAll
  static void twoStudiosWithASetupEach() throws Exception {
    postgres = PostgresForTests.start();
    database = postgres.newDatabase();
    working = WorkingDatabase.at(postgres.url(database));
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "insert into lampwright.person values"
              + " ('nora0000', 'nora@demo.example', 'Nora', 'x', now()),"
              + " ('omar0000', 'omar@demo.example', 'Omar', 'x', now())");
      fill(rows, "studio1", "nora0000");
      fill(rows, "studio2", "omar0000");
    }
  }

  private static void fill(Rows rows, String studio, String person) throws SQLException {
    rows.run("begin", in(studio));
    rows.run(
        "insert into lampwright.studio values ('%s', 'Studio', now())".formatted(studio),
        "insert into lampwright.member values ('%s', '%s', 'owner', now())"
            .formatted(studio, person),
        "insert into lampwright.setup (studio_id, id, revision, title, document, created_at, created_by, changed_at, changed_by) values ('%s', 'setup1', 1, 'Harbour', '{}', now(), '%s', now(), '%s')"
            .formatted(studio, person, person),
        "insert into lampwright.setup_revision values ('%s', 'setup1', 1, 'Harbour', '{}', now(), '%s', '', false)"
            .formatted(studio, person),
        "insert into lampwright.setup_signature values ('%s', 'setup1', 1, 1, '{}')"
            .formatted(studio),
        "insert into lampwright.kit (studio_id, id, revision, name, document, created_at, created_by, changed_at, changed_by) values ('%s', 'kit1', 1, 'Van', '{}', now(), '%s', now(), '%s')"
            .formatted(studio, person, person),
        "insert into lampwright.kit_revision values ('%s', 'kit1', 1, 'Van', '{}', now(), '%s', '', false)"
            .formatted(studio, person),
        "insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted) values ('%s', 'setup', 'setup1', 1, false)"
            .formatted(studio),
        "insert into lampwright.former_member (studio_id, person_id) values ('%s', '%s')"
            .formatted(studio, person),
        "commit");
  }

  private static String in(String studio) {
    return "select set_config('lampwright.studio', '%s', true)".formatted(studio);
  }

  @AfterAll
  static void stop() throws IOException {
    postgres.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "studio",
        "member",
        "setup",
        "setup_revision",
        "setup_signature",
        "kit",
        "kit_revision",
        "former_member"
      })
  void withoutAStudioThereAreNoRows(String table) throws SQLException {
    try (Rows rows = Rows.as(working)) {
      assertEquals("0", rows.one("select count(*) from lampwright." + table));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "studio",
        "member",
        "setup",
        "setup_revision",
        "setup_signature",
        "kit",
        "kit_revision",
        "former_member"
      })
  void inAStudioThereAreItsOwnRowsOnly(String table) throws SQLException {
    String key = table.equals("studio") ? "id" : "studio_id";
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"));
      assertEquals(
          List.of("studio1"), rows.column("select %s from lampwright.%s".formatted(key, table)));
    }
  }

  @Test
  void afterACommitTheEmptySettingMeansNoRowsAndNoError() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"), "commit");
      assertEquals("", rows.one("select current_setting('lampwright.studio', true)"));
      assertEquals("0", rows.one("select count(*) from lampwright.setup"));
    }
  }

  @Test
  void nothingCanBeWrittenIntoAnotherStudio() throws SQLException {
    for (String sql :
        List.of(
            "insert into lampwright.setup (studio_id, id, revision, title, document, created_at,"
                + " created_by, changed_at, changed_by) values ('studio2', 'smuggled', 1, 'x',"
                + " '{}', now(), 'nora0000', now(), 'nora0000')",
            "insert into lampwright.member values ('studio2', 'nora0000', 'owner', now())",
            "insert into lampwright.former_member (studio_id, person_id) values ('studio2',"
                + " 'nora0000')",
            "insert into lampwright.studio values ('studio3', 'x', now())",
            "insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted)"
                + " values ('studio2', 'setup', 'setup1', 2, true)",
            "insert into lampwright.setup_signature values ('studio2', 'setup1', 1, 1, '{}')")) {
      assertRefused(sql, "row-level security");
    }
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"), "update lampwright.setup set title = 'mine'");
      rows.run(in("studio2"));
      assertEquals("Harbour", rows.one("select title from lampwright.setup"));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "delete from lampwright.setup_revision",
        "update lampwright.setup_revision set message = 'x'",
        "delete from lampwright.setup_signature",
        "update lampwright.setup_signature set revision = 2",
        "delete from lampwright.kit_revision",
        "update lampwright.kit_revision set message = 'x'",
        "delete from lampwright.change_log",
        "update lampwright.change_log set revision = 2",
        "select seq from lampwright.change_log",
        "insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted,"
            + " transaction_id) values ('studio1', 'setup', 'setup1', 2, false, 1)",
        "update lampwright.setup set studio_id = 'studio2'",
        "update lampwright.setup set parent_id = 'setup1', parent_revision = 1",
        "update lampwright.setup_revision set planned_revision = null",
        "delete from lampwright.setup",
        "truncate lampwright.setup",
        "update lampwright.catalogue set identity = 'x'",
        "select installed_rank from lampwright.flyway_schema_history",
        "create table lampwright.extra (id text)",
        "alter table lampwright.setup disable row level security",
        "set role lampwright_owner"
      })
  void historyAndShapeAreOutOfTheServersReach(String sql) throws SQLException {
    assertRefused(sql, "permission denied", "must be owner");
  }

  private static void assertRefused(String sql, String... reasons) throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"));
      SQLException refusal = assertThrows(SQLException.class, () -> rows.run(sql), sql);
      String message = String.valueOf(refusal.getMessage());
      assertTrue(List.of(reasons).stream().anyMatch(message::contains), sql + ": " + message);
    }
  }

  @Test
  void aPersonMayListTheirOwnStudiosWithoutBeingInOne() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", "select set_config('lampwright.person', 'omar0000', true)");
      assertEquals(List.of("studio2"), rows.column("select id from lampwright.studio"));
      assertEquals(List.of("studio2"), rows.column("select studio_id from lampwright.member"));
      assertEquals("0", rows.one("select count(*) from lampwright.setup"));
    }
  }

  @Test
  void aSavedSearchIsItsOwnersAloneAndGoesWithTheirMembership() throws SQLException {
    String fields =
        "(studio_id, person_id, id, revision, name, name_key, question, created_at, changed_at,"
            + " seen_at)";
    String rest = ", 1, 'Dusk', 'dusk', 'q=dusk', now(), now(), now())";
    String as = "select set_config('lampwright.person', '%s', true)";
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "begin",
          in("studio1"),
          "insert into lampwright.member values ('studio1', 'omar0000', 'reader', now())",
          as.formatted("omar0000"),
          "insert into lampwright.saved_search "
              + fields
              + " values ('studio1', 'omar0000', 'dusk1'"
              + rest);
      assertEquals("1", rows.one("select count(*) from lampwright.saved_search"));
      rows.run(in("studio2"));
      assertEquals("0", rows.one("select count(*) from lampwright.saved_search"));
      rows.run(in("studio1"), as.formatted("nora0000"));
      assertEquals("0", rows.one("select count(*) from lampwright.saved_search"));
      rows.run("update lampwright.saved_search set name = 'x'");
      rows.run("delete from lampwright.member where person_id = 'omar0000'");
      rows.run(
          "insert into lampwright.member values ('studio1', 'omar0000', 'reader', now())",
          as.formatted("omar0000"));
      assertEquals("0", rows.one("select count(*) from lampwright.saved_search"));
    }
    assertRefused(
        "insert into lampwright.saved_search "
            + fields
            + " values ('studio1', 'nora0000', 'dusk1'"
            + rest,
        "row-level security");
    assertRefused("update lampwright.saved_search set person_id = 'x'", "permission denied");
  }

  @Test
  void theIndexerReadsEveryStudioAndWritesNothing() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", "set local role lampwright_indexer");
      assertEquals("2", rows.one("select count(*) from lampwright.setup"));
      assertEquals("2", rows.one("select count(*) from lampwright.change_log"));
      assertEquals("1", rows.one("select count(*) from lampwright.catalogue"));
      rows.run(
          "select studio_id, id, deleted_at, latitude_deg, longitude_deg from lampwright.location",
          "select studio_id, id, setup_id, kind, changed_at, statistics, sha256, deleted_at"
              + " from lampwright.picture");
    }
    for (String sql :
        List.of(
            "select password_hash from lampwright.person",
            "select person_id from lampwright.member",
            "select document from lampwright.location",
            "select name from lampwright.location",
            "select document from lampwright.picture",
            "select facts from lampwright.picture",
            "update lampwright.picture set statistics = '{}'",
            "update lampwright.setup set title = 'x'",
            "update lampwright.setup_signature set version = 2",
            "delete from lampwright.change_log")) {
      try (Rows rows = Rows.as(working)) {
        rows.run("begin", "set local role lampwright_indexer");
        assertThrows(SQLException.class, () -> rows.run(sql), sql);
      }
    }
  }

  @Test
  void theOwnerOfTheTablesIsBoundToo() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      rows.run(
          "create role plain_owner nologin",
          "begin",
          "grant usage on schema lampwright to plain_owner",
          "alter table lampwright.setup owner to plain_owner",
          "set local role plain_owner");
      assertEquals("0", rows.one("select count(*) from lampwright.setup"));
      rows.run("rollback", "drop role plain_owner");
    }
  }

  @Test
  void everyTableOfAStudioForcesRowLevelSecurityAndHasAPolicy() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      List<String> ofStudios =
          rows.column(
              """
              select c.relname from pg_class c
              join pg_namespace n on n.oid = c.relnamespace
              where n.nspname = 'lampwright' and c.relkind in ('r', 'p')
                and (c.relname = 'studio' or exists (select from pg_attribute a
                  where a.attrelid = c.oid and a.attname = 'studio_id' and not a.attisdropped))
              """);
      assertTrue(ofStudios.size() >= 7, ofStudios.toString());
      List<String> guarded =
          rows.column(
              """
              select c.relname from pg_class c
              join pg_namespace n on n.oid = c.relnamespace
              where n.nspname = 'lampwright' and c.relrowsecurity and c.relforcerowsecurity
                and exists (select from pg_policy p where p.polrelid = c.oid
                  and p.polcmd = '*' and p.polqual is not null and p.polwithcheck is not null)
              """);
      assertTrue(guarded.containsAll(ofStudios), ofStudios + " but only " + guarded);
    }
  }

  @Test
  void everyUniqueAndForeignKeyOfAStudiosRowCarriesItsStudio() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      List<String> withoutStudio =
          rows.column(
              """
              select k.conname from pg_constraint k
              join pg_class c on c.oid = k.conrelid
              join pg_namespace n on n.oid = c.relnamespace
              join pg_attribute a on a.attrelid = c.oid and a.attname = 'studio_id'
              where n.nspname = 'lampwright' and k.contype in ('p', 'u', 'f')
                and not a.attnum = any (k.conkey)
                and coalesce(k.confrelid <> 'lampwright.person'::regclass, true)
                and k.conname not in ('change_log_pk', 'audit_entry_pk')
              """);
      assertEquals(List.of(), withoutStudio);
    }
  }

  @Test
  void noViewOrFunctionRunsWithTheOwnersRights() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals(
          List.of(),
          rows.column(
              """
              select relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
              where n.nspname = 'lampwright' and (relkind = 'm' or relkind = 'v'
                and not coalesce('security_invoker=true' = any (reloptions), false))
              union all
              select proname from pg_proc p join pg_namespace n on n.oid = p.pronamespace
              where n.nspname = 'lampwright' and prosecdef
              """));
    }
  }

  @Test
  void theServersRoleOwnsNothing() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals(
          List.of(),
          rows.column(
              "select relname from pg_class where relowner in ('lampwright_server'::regrole,"
                  + " 'lampwright_indexer'::regrole)"));
      assertFalse(
          rows.column(
                  "select rolname from pg_roles where not rolsuper and not rolbypassrls and not"
                      + " rolcreaterole and not rolcreatedb and rolname like 'lampwright%'")
              .isEmpty());
    }
  }
}
