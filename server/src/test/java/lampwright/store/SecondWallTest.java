package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What keeps studios apart where the code above asks nobody's leave. Here none of it is asked: the
 * store is used as a task would use it that forgot to.
 *
 * <p>The traps are those of the PostgreSQL documentation, chapters "Row Security Policies" and
 * "CREATE POLICY": the owner who bypasses, the superuser, what a setting is after a commit,
 * settings that outlive a transaction on a pooled connection, views, and keys that tell of hidden
 * rows. Which role is refused at the start is in the migrations' WorkingDatabaseTest.
 */
class SecondWallTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static final SetupId SETUP = new SetupId("setup001");

  private static PersonId nora;
  private static PersonId omar;
  private static StudioId noras;
  private static StudioId omars;

  @BeforeAll
  static void twoStudios() {
    nora = database.newPerson();
    omar = database.newPerson();
    noras = database.newStudio(nora);
    omars = database.newStudio(omar);
    write(database.open(), noras, nora, "Nora's");
    write(database.open(), omars, omar, "Omar's");
  }

  private static void write(Database open, StudioId studio, PersonId person, String title) {
    open.inStudio(studio, Asker.whole(person), in -> new Setups(in).create(SETUP, title, "{}", ""));
  }

  private static List<String> titles(Database open, StudioId studio, PersonId person) {
    return open.inStudio(
        studio,
        Asker.whole(person),
        in ->
            new Setups(in)
                .list(Optional.empty(), 10).items().stream().map(StoredSetup::title).toList());
  }

  @Test
  void whoIsNoMemberDoesNotEnterAndNothingOfTheWorkIsDone() {
    List<String> done = new ArrayList<>();
    for (StudioId studio : List.of(noras, new StudioId("nowhere0"))) {
      assertThrows(
          NotEntered.class,
          () ->
              database
                  .open()
                  .<Boolean>inStudio(studio, Asker.whole(omar), _ -> done.add("searched")));
      assertThrows(
          NotEntered.class,
          () ->
              database
                  .open()
                  .<Boolean>inStudioAtOneMoment(
                      studio, Asker.whole(omar), _ -> done.add("taken out")));
    }
    assertEquals(List.of(), done);
  }

  @Test
  void whoWasTakenOutIsOutAtOnce() {
    PersonId guest = database.newPerson();
    database.join(noras, nora, guest, Role.READER);
    assertEquals(List.of("Nora's"), titles(database.open(), noras, guest));
    database.open().inStudio(noras, Asker.whole(nora), in -> new Members(in).remove(guest));
    assertThrows(NotEntered.class, () -> titles(database.open(), noras, guest));
  }

  @Test
  void aTokenForAnotherStudioDoesNotOpenThisOne() {
    Asker elsewhere = new Asker(nora, new Reach(Optional.empty(), Optional.of(omars)));
    assertThrows(
        NotEntered.class,
        () -> database.open().inStudio(noras, elsewhere, in -> new Setups(in).count()));
    assertEquals(List.of(), database.open().asPerson(elsewhere, in -> new Studios(in).list()));
  }

  @Test
  void aTokenNeverHasMoreThanItsPersonAndNoMoreThanItsOwn() {
    PersonId guest = database.newPerson();
    database.join(noras, nora, guest, Role.CREW);
    for (Role ceiling : Role.values()) {
      Asker limited = new Asker(guest, new Reach(Optional.of(ceiling), Optional.empty()));
      Role left = ceiling == Role.READER ? Role.READER : Role.CREW;
      assertEquals(
          Optional.of(left),
          database.open().asPerson(limited, in -> new Studios(in).findRole(noras)),
          ceiling.toString());
    }
  }

  /** A transaction of Nora's, in which the statement is written as if for Omar's studio. */
  private static String refusal(String sql) {
    return String.valueOf(
        assertThrows(
                DataAccessException.class,
                () ->
                    database
                        .open()
                        .<Integer>inStudio(noras, Asker.whole(nora), in -> in.sql().execute(sql)))
            .getMessage());
  }

  @Test
  void noTableOfAStudioShowsOrTakesARowOfAnother() throws SQLException {
    List<String> tables =
        database.sqlAsSuperuser(
            "select table_name from information_schema.columns"
                + " where table_schema = 'lampwright' and column_name = 'studio_id' order by 1");
    assertTrue(tables.size() > 20, tables.toString());
    List<String> wrong = new ArrayList<>();
    for (String table : tables) {
      boolean isReadable = mayBe("select", table);
      String others = "select count(*) from lampwright." + table + " where studio_id = '%s'";
      if (isReadable && !one(others.formatted(omars)).equals("0")) {
        wrong.add(table + " shows a row");
      }
      if (mayBe("delete", table)
          && run("delete from lampwright." + table + " where studio_id = '" + omars + "'") > 0) {
        wrong.add(table + " loses a row");
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(
        refusal(
                "insert into lampwright.member (studio_id, person_id, role, created_at) values ('"
                    + omars
                    + "', '"
                    + nora
                    + "', 'owner', now())")
            .contains("row-level security"));
    assertEquals(List.of("Omar's"), titles(database.open(), omars, omar));
  }

  private static boolean mayBe(String privilege, String table) throws SQLException {
    return database
        .sql("select has_table_privilege('lampwright." + table + "', '" + privilege + "')")
        .getLast()
        .equals("t");
  }

  private static String one(String sql) {
    return database
        .open()
        .inStudio(noras, Asker.whole(nora), in -> String.valueOf(in.sql().fetchSingle(sql).get(0)));
  }

  private static int run(String sql) {
    return database.open().inStudio(noras, Asker.whole(nora), in -> in.sql().execute(sql));
  }

  /** A key that spanned studios would say "duplicate key" for what is only in another. */
  @Test
  void theSameIdCanBeTakenInEachStudioSoThatNoKeyTellsOfAnother() {
    SetupId only = new SetupId("only0001");
    database
        .open()
        .inStudio(omars, Asker.whole(omar), in -> new Setups(in).create(only, "Secret", "{}", ""));
    database
        .open()
        .inStudio(noras, Asker.whole(nora), in -> new Setups(in).create(only, "Own", "{}", ""));
    database.open().inStudio(noras, Asker.whole(nora), in -> new Setups(in).delete(only, 1, ""));
    database.open().inStudio(omars, Asker.whole(omar), in -> new Setups(in).delete(only, 1, ""));
  }

  @Test
  void onePooledConnectionServesTwoPeopleInTurnAndForgetsEachAtOnce() throws Exception {
    try (Database alone = new Database(database.where(), 1, Clock.systemUTC())) {
      for (int turn = 0; turn < 20; turn++) {
        assertEquals(List.of("Nora's"), titles(alone, noras, nora));
        assertThrows(NotEntered.class, () -> titles(alone, noras, omar));
        assertEquals(List.of("Omar's"), titles(alone, omars, omar));
        assertThrows(
            IllegalStateException.class,
            () ->
                alone.<Integer>inStudio(
                    noras,
                    Asker.whole(nora),
                    _ -> {
                      throw new IllegalStateException("planted");
                    }));
        assertEquals(
            List.of("", "", "0"),
            alone.anonymous(
                in ->
                    List.of(
                        text(in, "coalesce(current_setting('lampwright.studio', true), '')"),
                        text(in, "coalesce(current_setting('lampwright.person', true), '')"),
                        text(in, "(select count(*) from lampwright.setup)"))));
      }
    }
  }

  private static String text(Transaction in, String expression) {
    return String.valueOf(in.sql().fetchSingle("select " + expression).get(0));
  }
}
