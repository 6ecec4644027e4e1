package lampwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** Who holds the secret of an invitation finds that one, in whatever studio, and no other. */
class InvitationTest {

  private static final String FIRST = "ab".repeat(32);
  private static final String SECOND = "cd".repeat(32);
  private static final String ELSEWHERE = "ef".repeat(32);
  private static final String SEEN = "select id from lampwright.invitation order by id";

  private static PostgresForTests postgres;
  private static WorkingDatabase working;

  @BeforeAll
  static void twoStudiosThatInvite() throws Exception {
    postgres = PostgresForTests.start();
    working = WorkingDatabase.at(postgres.url(postgres.newDatabase()));
    try (Rows rows = Rows.as(working)) {
      rows.run(
          "insert into lampwright.person (id, email, name, password_hash, created_at) values"
              + " ('nora0000', 'nora@demo.example', 'Nora', 'x', now())",
          "begin",
          as("studio1"),
          "insert into lampwright.studio values ('studio1', 'Studio', now())",
          "insert into lampwright.member values ('studio1', 'nora0000', 'owner', now())",
          invitation("studio1", "first", FIRST),
          invitation("studio1", "second", SECOND),
          as("studio2"),
          "insert into lampwright.studio values ('studio2', 'Other', now())",
          "insert into lampwright.member values ('studio2', 'nora0000', 'owner', now())",
          invitation("studio2", "elsewhere", ELSEWHERE),
          "commit");
    }
  }

  @AfterAll
  static void stop() throws IOException {
    postgres.close();
  }

  private static String as(String studio) {
    return "select set_config('lampwright.studio', '%s', true), set_config('lampwright.person',"
            .formatted(studio)
        + " '%s', true)".formatted(studio.isEmpty() ? "" : "nora0000");
  }

  private static String holding(String hash) {
    return "select set_config('lampwright.link', '%s', true)".formatted(hash);
  }

  private static String invitation(String studio, String id, String hash) {
    return "insert into lampwright.invitation values ('%s', '%s', decode('%s', 'hex'), 'crew',"
            .formatted(studio, id, hash)
        + " 'somebody', 'nora0000', now(), now() + interval '7 days')";
  }

  @Test
  void whoHoldsASecretSeesItsInvitationAndNoOther() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", holding(FIRST));
      assertEquals(List.of("first"), rows.column(SEEN));
      rows.run(holding(ELSEWHERE));
      assertEquals(List.of("elsewhere"), rows.column(SEEN));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0000000000000000000000000000000000000000000000000000000000000000"})
  void whoHoldsNoneOrAnUnknownOneSeesNothing(String hash) throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", holding(hash));
      assertEquals(List.of(), rows.column(SEEN));
    }
  }

  @Test
  void aSecretIsForgottenWithItsTransaction() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", holding(FIRST), "commit");
      assertEquals(List.of(), rows.column(SEEN));
    }
  }

  @Test
  void aStudioSeesItsOwn() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", as("studio1"));
      assertEquals(List.of("first", "second"), rows.column(SEEN));
      rows.run(as("studio2"));
      assertEquals(List.of("elsewhere"), rows.column(SEEN));
    }
  }

  @Test
  void whoHoldsASecretOnlyReads() throws SQLException {
    try (Rows rows = Rows.as(working)) {
      rows.run("begin", holding(FIRST), "delete from lampwright.invitation");
      assertEquals(List.of("first"), rows.column(SEEN), "outside its studio nothing goes");
      SQLException refusal =
          assertThrows(SQLException.class, () -> rows.run(invitation("studio1", "third", FIRST)));
      assertTrue(String.valueOf(refusal.getMessage()).contains("row-level security"));
    }
    try (Rows rows = Rows.as(working)) {
      rows.run("begin");
      SQLException refusal =
          assertThrows(
              SQLException.class,
              () -> rows.run("update lampwright.invitation set role = 'owner'"));
      assertTrue(String.valueOf(refusal.getMessage()).contains("permission denied"));
    }
  }
}
