package lampwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No way of writing forgets the audit trail, and the server's role can only add to it. */
class AuditTrailTest {

  /** What the server's role writes and no trigger tells of, and why not. */
  private static final Map<String, String> REASONS =
      Map.ofEntries(
          Map.entry("audit_entry", "the trail itself"),
          Map.entry("change_log", "tells the index, by the same changes"),
          Map.entry("studio_writes", "how often the studio was written, and nothing else"),
          Map.entry("setup_revision", "made with its setup"),
          Map.entry("kit_revision", "made with its kit"),
          Map.entry("gear_revision", "made with its gear"),
          Map.entry("location_revision", "made with its location"),
          Map.entry("trail_revision", "made with its trail"),
          Map.entry("take_revision", "made with its take"),
          Map.entry("note_revision", "made with its note"),
          Map.entry("picture_revision", "made with its picture"),
          Map.entry("kit_gear", "follows from the kit's document"),
          Map.entry("setup_signature", "computed from the setup"),
          Map.entry("setup_meaning", "computed from the setup"),
          Map.entry("made_once", "what lets a request be sent again"),
          Map.entry("saved_search", "nobody's business but the member's"),
          Map.entry("drill_answer", "nobody's business but the member's"),
          Map.entry("stage_done", "nobody's business but the member's"),
          Map.entry("session", "told by the code: signed in, signed out"),
          Map.entry("token", "told by the code: made, revoked"),
          Map.entry("second_factor", "told by the code: on, off"),
          Map.entry("recovery_code", "comes and goes with the second factor"),
          Map.entry("known_device", "follows from signing in"),
          Map.entry("import_job", "how far it is; what it brings in is told of itself"),
          Map.entry("failed_try", "counts for minutes; what failed is told by the code"),
          Map.entry("password_reset", "told by the code: made, and the password changed"),
          Map.entry("former_member", "follows from the member, of whom it is told"),
          Map.entry("person", "told by the code where it matters: the password"),
          Map.entry("first_start_link", "before there is anybody who could read it"));

  private static PostgresForTests postgres;
  private static String database;
  private static WorkingDatabase working;

  @BeforeAll
  static void aStudioWithAnOwnerAndAReader() throws Exception {
    postgres = PostgresForTests.start();
    database = postgres.newDatabase();
    working = WorkingDatabase.at(postgres.url(database));
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "insert into lampwright.person (id, email, name, password_hash, created_at) values"
              + " ('nora0000', 'nora@demo.example', 'Nora', 'x', now()),"
              + " ('omar0000', 'omar@demo.example', 'Omar', 'x', now())",
          "begin",
          as("studio1", "nora0000"),
          "insert into lampwright.studio values ('studio1', 'Studio', now())",
          "insert into lampwright.member values ('studio1', 'nora0000', 'owner', now()),"
              + " ('studio1', 'omar0000', 'reader', now())",
          "insert into lampwright.kit (studio_id, id, revision, name, document, created_at,"
              + " created_by, changed_at, changed_by) values ('studio1', 'kit1', 1, 'Van',"
              + " '{\"note\":\"Under the seat\"}', now(), 'nora0000', now(), 'nora0000')",
          "commit",
          "insert into lampwright.audit_entry (person_id, action, kind, subject_id, subject_name)"
              + " values ('omar0000', 'signed_in', 'account', 'omar0000', '')");
    }
  }

  @AfterAll
  static void stop() throws IOException {
    postgres.close();
  }

  private static String as(String studio, String person) {
    return "select set_config('lampwright.studio', '%s', true), set_config('lampwright.person', '%s', true)"
        .formatted(studio, person);
  }

  @Test
  void everyTableThatTheServerWritesIsToldOfOrHasAReason() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      Set<String> written =
          new TreeSet<>(
              rows.column(
                  """
                  select table_name from information_schema.column_privileges
                    where grantee = 'lampwright_server' and table_schema = 'lampwright'
                      and privilege_type in ('INSERT', 'UPDATE')
                  union
                  select table_name from information_schema.table_privileges
                    where grantee = 'lampwright_server' and table_schema = 'lampwright'
                      and privilege_type = 'DELETE'
                  """));
      Set<String> told =
          new TreeSet<>(
              rows.column(
                  """
                  select c.relname from pg_trigger t join pg_class c on c.oid = t.tgrelid
                  where t.tgfoid = 'lampwright.audit'::regproc and t.tgenabled = 'O'
                  """));
      assertTrue(written.size() > 25, written.toString());
      Set<String> known = new TreeSet<>(told);
      known.addAll(REASONS.keySet());
      assertEquals(written, known, "attach the trigger, or say why not");
      told.retainAll(REASONS.keySet());
      assertEquals(Set.of(), told, "told of, so it needs no reason");
    }
  }

  /** Each way in which the server's role may write such a table is one that its trigger sees. */
  @Test
  void aTriggerSeesEveryWayInWhichItsTableIsWritten() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals(
          List.of(),
          rows.column(
              """
              select c.relname || ' ' || way.name
              from pg_trigger t join pg_class c on c.oid = t.tgrelid
              cross join (values ('INSERT', 4), ('DELETE', 8), ('UPDATE', 16)) as way (name, bit)
              where t.tgfoid = 'lampwright.audit'::regproc
                and (t.tgtype & way.bit = 0 or t.tgtype & 1 = 0 or t.tgqual is not null
                  or t.tgattr <> '')
                and case when way.name = 'DELETE'
                  then has_table_privilege('lampwright_server', c.oid, 'DELETE')
                  else has_any_column_privilege('lampwright_server', c.oid, way.name) end
              """));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "delete from lampwright.audit_entry",
        "update lampwright.audit_entry set subject_name = 'x'",
        "truncate lampwright.audit_entry",
        "insert into lampwright.audit_entry (studio_id, person_id, action, kind, subject_id,"
            + " subject_name, at) values ('studio1', 'nora0000', 'made', 'kit', 'kit1', '', now())",
        "alter table lampwright.kit disable trigger audit",
        "drop trigger audit on lampwright.kit",
        "create or replace function lampwright.audit() returns trigger language plpgsql as"
            + " 'begin return null; end'",
        "set session_replication_role = 'replica'",
        "select lampwright.remove_demo()"
      })
  void anEntryIsNeitherChangedNorTakenAwayNorKeptFromBeingWritten(String sql) throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", as("studio1", "nora0000"));
      SQLException refusal = assertThrows(SQLException.class, () -> rows.run(sql), sql);
      assertTrue(
          String.valueOf(refusal.getMessage()).matches("(?s).*(permission denied|must be owner).*"),
          refusal.getMessage());
    }
  }

  @ParameterizedTest
  @CsvSource({"studio1,omar0000", "studio2,nora0000", ",omar0000", ",nora0000"})
  void nobodyWritesInAnothersNameNorInAnotherStudio(String studio, String person)
      throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", as("studio1", studio == null ? "other000" : "nora0000"));
      SQLException refusal =
          assertThrows(
              SQLException.class,
              () ->
                  rows.run(
                      "insert into lampwright.audit_entry (studio_id, person_id, action, kind,"
                          + " subject_id, subject_name) values (%s, '%s', 'made', 'kit', 'k', '')"
                              .formatted(studio == null ? "null" : "'" + studio + "'", person)));
      assertTrue(String.valueOf(refusal.getMessage()).contains("row-level security"));
    }
  }

  @Test
  void anOwnerReadsTheStudiosAndEverybodyTheirOwn() throws SQLException {
    String kinds = "select kind from lampwright.audit_entry order by seq";
    try (Rows rows = Rows.as(working)) {
      assertEquals(List.of(), rows.column(kinds));
      rows.run("begin", as("studio1", "nora0000"));
      assertEquals(List.of("studio", "member", "member", "kit"), rows.column(kinds));
      rows.run(as("studio1", "omar0000"));
      assertEquals(List.of("account"), rows.column(kinds));
      rows.run(as("studio2", "nora0000"));
      assertEquals(List.of(), rows.column(kinds));
    }
  }

  @Test
  void anEntryHoldsTheNameAndNeverTheDocument() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      String entry =
          rows.one("select row_to_json(e)::text from lampwright.audit_entry e where kind = 'kit'");
      assertTrue(entry.contains("\"Van\"") && entry.contains("nora0000"), entry);
      assertEquals(
          "0",
          rows.one(
              "select count(*) from lampwright.audit_entry e"
                  + " where row_to_json(e)::text ~ 'seat|Nora|Omar'"));
    }
  }

  @Test
  void whatIsTakenBackLeavesNoEntry() throws SQLException {
    String count = "select count(*) from lampwright.audit_entry where subject_name = 'Never'";
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "begin",
          as("studio1", "nora0000"),
          "update lampwright.kit set name = 'Never', revision = 2 where id = 'kit1'");
      assertEquals("1", rows.one(count));
      rows.run("rollback");
    }
    try (Rows rows = postgres.asSuperuser(database)) {
      assertEquals("0", rows.one(count));
    }
  }

  @Test
  void aLinkIsFoundByItsSecretAloneAndGoesWithItsMaker() throws SQLException {
    String hash = "ab".repeat(32);
    String count = "select count(*) from lampwright.share_link";
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "begin",
          as("studio1", "omar0000"),
          "insert into lampwright.setup (studio_id, id, revision, title, document, created_at,"
              + " created_by, changed_at, changed_by, state) values ('studio1', 'setup1', 1,"
              + " 'Harbour', '{}', now(), 'omar0000', now(), 'omar0000', 'draft')",
          "insert into lampwright.setup_revision (studio_id, setup_id, revision, title, document,"
              + " changed_at, changed_by, message, deleted, state) values ('studio1', 'setup1', 1,"
              + " 'Harbour', '{}', now(), 'omar0000', '', false, 'draft')",
          "insert into lampwright.share_link values ('studio1', 'link1', decode('%s', 'hex'),"
                  .formatted(hash)
              + " 'setup1', 1, false, false, now(), 'omar0000', now() + interval '14 days')");
      rows.run(as("", ""));
      assertEquals("0", rows.one(count));
      rows.run("select set_config('lampwright.link', '%s', true)".formatted("cd".repeat(32)));
      assertEquals("0", rows.one(count));
      rows.run("select set_config('lampwright.link', '%s', true)".formatted(hash));
      assertEquals("1", rows.one(count));
      rows.run("delete from lampwright.share_link");
      assertEquals("1", rows.one(count), "who holds it reads it and no more");
      rows.run(
          as("studio1", "nora0000"), "delete from lampwright.member where person_id = 'omar0000'");
      assertEquals("0", rows.one(count));
      assertEquals(
          List.of("made", "deleted"),
          rows.column(
              "select action from lampwright.audit_entry where kind = 'share_link' order by seq"));
    }
  }
}
