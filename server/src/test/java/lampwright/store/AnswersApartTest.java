package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What somebody answered to drills is theirs and their owners', by SQL behind the code's back. */
class AnswersApartTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static final SetupId SETUP = new SetupId("setup001");

  private static PersonId owner;
  private static PersonId assistant;
  private static PersonId author;
  private static PersonId stranger;
  private static StudioId studio;
  private static StudioId other;

  @BeforeAll
  static void anAssistantAnswered() {
    owner = database.newPerson();
    assistant = database.newPerson();
    author = database.newPerson();
    stranger = database.newPerson();
    studio = database.newStudio(owner);
    other = database.newStudio(stranger);
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(owner),
            in -> {
              new Members(in).add(assistant, Role.CREW);
              new Members(in).add(author, Role.AUTHOR);
              return new Setups(in).create(SETUP, "Two heads", "{}", "");
            });
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(assistant),
            in -> {
              new DrillAnswers(in)
                  .add(
                      new DrillAnswers.Given(
                          "sync", SETUP, 1, 7, "2.0", false, Optional.of("drilling.slip.once")));
              return new DrillAnswers(in).listOf(assistant);
            });
  }

  private static List<String> seen(StudioId where, PersonId who) throws SQLException {
    return database.sql(
        "begin",
        "select set_config('lampwright.studio', '" + where + "', true)",
        "select set_config('lampwright.person', '" + who + "', true)",
        "select answer from lampwright.drill_answer");
  }

  @Test
  void oneselfAndOwnersSeeItAndNobodyElse() throws SQLException {
    assertEquals(List.of("2.0"), seen(studio, assistant));
    assertEquals(List.of("2.0"), seen(studio, owner));
    assertEquals(List.of(), seen(studio, author));
    assertEquals(List.of(), seen(studio, stranger));
    assertEquals(List.of(), seen(other, assistant), "in another studio");
    assertEquals(List.of(), database.sql("select answer from lampwright.drill_answer"));
  }

  @Test
  void nobodyAnswersForAnother() {
    DataAccessException refusal =
        assertThrows(
            DataAccessException.class,
            () ->
                database
                    .open()
                    .inStudio(
                        studio,
                        Asker.whole(owner),
                        in ->
                            in.sql()
                                .execute(
                                    "insert into lampwright.drill_answer (studio_id, person_id,"
                                        + " kind, setup_id, setup_revision, seed, answer, is_right,"
                                        + " answered_at) values ({0}, {1}, 'sync', 'setup001', 1,"
                                        + " 7, '2.0', true, now())",
                                    org.jooq.impl.DSL.val(studio.text()),
                                    org.jooq.impl.DSL.val(assistant.text()))));
    assertTrue(String.valueOf(refusal.getMessage()).contains("row-level security"));
  }

  @Test
  void nobodyChangesOrForgetsOne() {
    for (String statement :
        List.of(
            "update lampwright.drill_answer set is_right = true",
            "delete from lampwright.drill_answer")) {
      DataAccessException refusal =
          assertThrows(
              DataAccessException.class,
              () ->
                  database
                      .open()
                      .inStudio(studio, Asker.whole(assistant), in -> in.sql().execute(statement)));
      assertTrue(String.valueOf(refusal.getMessage()).contains("permission denied"));
    }
  }
}
