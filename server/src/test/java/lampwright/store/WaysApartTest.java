package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.TrailId;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Somebody's way is theirs and the owners', and nobody judges their own, even behind the code. */
class WaysApartTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static final SetupId SETUP = new SetupId("setup001");
  private static final TrailId TRAIL = new TrailId("trail001");
  private static final StageId STAGE = new StageId("build");

  private static PersonId owner;
  private static PersonId assistant;
  private static PersonId author;
  private static PersonId colleague;
  private static StudioId studio;

  @BeforeAll
  static void anAuthorAndAnAssistantHandIn() {
    owner = database.newPerson();
    assistant = database.newPerson();
    author = database.newPerson();
    colleague = database.newPerson();
    studio = database.newStudio(owner);
    in(
        owner,
        in -> {
          Members members = new Members(in);
          members.add(assistant, Role.CREW);
          members.add(author, Role.AUTHOR);
          members.add(colleague, Role.CREW);
          new Trails(in).create(TRAIL, "First day", "{}", "");
          return new Setups(in).create(SETUP, "Two heads", "{}", "");
        });
    handIn(assistant, "built001", "take0001");
    handIn(author, "built002", "take0002");
  }

  private static <T> T in(PersonId who, Function<StudioTransaction, T> work) {
    return database.open().inStudio(studio, Asker.whole(who), work);
  }

  private static void handIn(PersonId who, String build, String take) {
    in(
        who,
        in -> {
          new Takes(in, SETUP)
              .create(
                  new Takes.NewTake(
                      new TakeId(take),
                      1,
                      Instant.EPOCH,
                      LocalDate.EPOCH,
                      new Takes(in, SETUP).nextNumber(LocalDate.EPOCH),
                      "client-" + take,
                      "Run",
                      "{}"));
          new Ways(in).done(TRAIL, new StageId("read"));
          assertTrue(new Ways(in).handIn(build, TRAIL, STAGE, SETUP, new TakeId(take)));
          return build;
        });
  }

  private static List<String> seen(PersonId who, String table) throws SQLException {
    return database.sql(
        "begin",
        "select set_config('lampwright.studio', '" + studio + "', true)",
        "select set_config('lampwright.person', '" + who + "', true)",
        "select person_id from lampwright." + table + " order by 1");
  }

  private static List<String> sorted(PersonId... people) {
    return List.of(people).stream().map(PersonId::text).sorted().toList();
  }

  @Test
  void oneselfAndOwnersSeeAWayAndAuthorsOnlyWhatWaits() throws SQLException {
    assertEquals(sorted(assistant), seen(assistant, "stage_done"));
    assertEquals(sorted(author), seen(author, "stage_done"));
    assertEquals(List.of(), seen(colleague, "stage_done"));
    assertEquals(sorted(assistant, author), seen(owner, "stage_done"));
    assertEquals(sorted(assistant), seen(assistant, "built"));
    assertEquals(List.of(), seen(colleague, "built"));
    assertEquals(sorted(assistant, author), seen(owner, "built"));
    assertEquals(sorted(assistant, author), seen(author, "built"), "both wait");
  }

  @Test
  void nobodyJudgesTheirOwnOrWithoutTheRole() {
    boolean own = in(author, in -> new Ways(in).judge("built002", true, ""));
    boolean plain = in(colleague, in -> new Ways(in).judge("built001", true, ""));
    assertFalse(own || plain);
    for (PersonId who : List.of(author, assistant)) {
      String build = who.equals(author) ? "built002" : "built001";
      DataAccessException refusal =
          assertThrows(
              DataAccessException.class,
              () ->
                  in(
                      who,
                      in ->
                          in.sql()
                              .execute(
                                  "update lampwright.built set judged_at = now(), judged_by = {0},"
                                      + " is_signed_off = true, words = '' where id = {1}",
                                  org.jooq.impl.DSL.val(who.text()),
                                  org.jooq.impl.DSL.val(build))));
      assertTrue(
          String.valueOf(refusal.getMessage())
              .matches("(?s).*(row-level security|built_is_judged_by_another).*"));
    }
  }

  @Test
  void whatWasHandedInOnceIsNotHandedInAgain() {
    boolean again =
        in(
            assistant,
            in -> new Ways(in).handIn("built009", TRAIL, STAGE, SETUP, new TakeId("take0001")));
    assertFalse(again);
  }
}
