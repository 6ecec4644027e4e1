package lampwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whatever is written of a studio counts, once a transaction, and nothing else does. */
class WritesAreCountedTest {

  private static PostgresForTests postgres;

  private String database = "";
  private WorkingDatabase working = new WorkingDatabase("", "", "");

  @BeforeAll
  static void start() throws IOException {
    postgres = PostgresForTests.start();
  }

  @AfterAll
  static void stop() throws IOException {
    postgres.close();
  }

  @BeforeEach
  void twoStudiosWithAPersonInBoth() throws SQLException {
    database = postgres.newDatabase();
    working = WorkingDatabase.at(postgres.url(database));
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "insert into lampwright.person (id, email, name, password_hash, created_at) values"
              + " ('nora0000', 'nora@demo.example', 'Nora', 'x', now()),"
              + " ('omar0000', 'omar@demo.example', 'Omar', 'x', now())");
      for (String studio : List.of("studio1", "studio2")) {
        rows.run(
            "begin",
            in(studio),
            "insert into lampwright.studio values ('%s', 'Studio', now())".formatted(studio),
            "insert into lampwright.member values ('%s', 'nora0000', 'owner', now())"
                .formatted(studio),
            "commit");
      }
    }
  }

  private static String in(String studio) {
    return "select set_config('lampwright.studio', '%s', true)".formatted(studio);
  }

  private static String kit(String studio, String id) {
    return "insert into lampwright.kit (studio_id, id, revision, name, document, created_at,"
        + " created_by, changed_at, changed_by) values ('%s', '%s', 1, 'Van', '{}', now(), 'nora0000', now(), 'nora0000')"
            .formatted(studio, id);
  }

  private int writes(String studio) throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      return Integer.parseInt(
          rows.one(
              "select coalesce(sum(writes), 0) from lampwright.studio_writes where studio_id = '%s'"
                  .formatted(studio)));
    }
  }

  /** What the counts are kept in cannot count itself. */
  @Test
  void everyTableOfAStudioIsCounted() throws SQLException {
    try (Rows rows = postgres.asSuperuser(database)) {
      List<String> ofStudios =
          rows.column(
              """
              select table_name from information_schema.columns
              where table_schema = 'lampwright' and column_name = 'studio_id'
                and table_name <> 'studio_writes'
              union select 'studio' order by 1
              """);
      assertTrue(ofStudios.size() > 30, ofStudios.toString());
      assertEquals(
          ofStudios,
          rows.column(
              """
              select c.relname from pg_trigger t join pg_class c on c.oid = t.tgrelid
              where t.tgfoid = 'lampwright.count_write'::regproc and t.tgenabled = 'O'
                and t.tgdeferrable and t.tginitdeferred and t.tgqual is null and t.tgattr = ''
                and t.tgtype & 29 = 29
              order by 1
              """));
    }
  }

  @Test
  void aTransactionCountsOnceHoweverMuchItWrites() throws SQLException {
    int before = writes("studio1");
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"), kit("studio1", "kit1"), kit("studio1", "kit2"), "commit");
      assertEquals(before + 1, writes("studio1"));
      rows.run(
          "begin",
          in("studio1"),
          "update lampwright.kit set name = 'Boat', revision = 2 where id = 'kit1'",
          "commit");
    }
    assertEquals(before + 2, writes("studio1"));
  }

  @Test
  void anotherStudioDoesNotCount() throws SQLException {
    int before = writes("studio2");
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"), kit("studio1", "kit1"), "commit");
    }
    assertEquals(before, writes("studio2"));
  }

  @Test
  void whatIsTakenBackDoesNotCount() throws SQLException {
    int before = writes("studio1");
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"), kit("studio1", "kit1"), "rollback");
    }
    assertEquals(before, writes("studio1"));
  }

  @Test
  void aPersonsNameCountsInEachOfTheirStudios() throws SQLException {
    int first = writes("studio1");
    int second = writes("studio2");
    try (Rows rows = Rows.as(working)) {
      rows.run("update lampwright.person set name = 'Eleonora' where id = 'nora0000'");
      assertEquals(first + 1, writes("studio1"));
      assertEquals(second + 1, writes("studio2"));
      rows.run("update lampwright.person set name = 'Omar Two' where id = 'omar0000'");
    }
    assertEquals(first + 1, writes("studio1"));
  }

  @Test
  void aNewMembershipCountsInTheOtherStudiosOfWhoJoins() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "begin",
          in("studio1"),
          "insert into lampwright.member values ('studio1', 'omar0000', 'crew', now())",
          "commit");
      int first = writes("studio1");
      int second = writes("studio2");
      rows.run(
          "begin",
          in("studio2"),
          "insert into lampwright.member values ('studio2', 'omar0000', 'crew', now())",
          "commit");
      assertEquals(first + 1, writes("studio1"));
      assertEquals(second + 1, writes("studio2"));
    }
  }

  @Test
  void twoWhoWriteAtOnceAreBothCounted() throws SQLException {
    int before = writes("studio1");
    try (Rows one = Rows.as(working);
        Rows other = Rows.as(working)) {
      one.run("begin", in("studio1"), kit("studio1", "kit1"));
      other.run("begin", in("studio1"), kit("studio1", "kit2"));
      other.run("commit");
      one.run("commit");
    }
    assertEquals(before + 2, writes("studio1"));
  }

  @Test
  void nobodyCountsAnotherStudioByHandNorTakesACountAway() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", in("studio1"));
      assertEquals(
          List.of("studio1"),
          rows.column("select distinct studio_id from lampwright.studio_writes"));
      SQLException refusal =
          assertThrows(
              SQLException.class,
              () -> rows.run("insert into lampwright.studio_writes values ('studio2', 0, 1)"));
      assertTrue(String.valueOf(refusal.getMessage()).contains("row-level security"));
    }
    try (Rows rows = Rows.as(working)) {
      SQLException refusal =
          assertThrows(SQLException.class, () -> rows.run("delete from lampwright.studio_writes"));
      assertTrue(String.valueOf(refusal.getMessage()).contains("permission denied"));
    }
    assertNotEquals(0, writes("studio1"));
  }
}
