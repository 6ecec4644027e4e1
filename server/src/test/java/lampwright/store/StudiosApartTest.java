package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.KitId;
import lampwright.gear.stock.GearId;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.place.LocationId;
import lampwright.setup.Parent;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.notes.NoteId;
import lampwright.setup.takes.TakeId;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** One studio's rows are never another's, through the store and by SQL behind its back. */
class StudiosApartTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private static final SetupId SETUP = new SetupId("setup001");
  private static final LocationId LOCATION = new LocationId("place001");
  private static final GearId GEAR = new GearId("gear0001");
  private static final KitId KIT = new KitId("kit00001");

  private static PersonId nora;
  private static PersonId omar;
  private static StudioId noras;
  private static StudioId omars;

  @BeforeAll
  static void twoStudiosWithTheSameIdsInside() {
    nora = database.newPerson();
    omar = database.newPerson();
    noras = database.newStudio(nora);
    omars = database.newStudio(omar);
    fill(noras, nora, "Nora's");
    fill(omars, omar, "Omar's");
  }

  private static void fill(StudioId studio, PersonId person, String title) {
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(person),
            in -> {
              new MadeOnce(in).take("a-key", "0".repeat(64), KIT.text(), Duration.ofDays(1));
              new Gear(in).create(GEAR, title, "{\"kind\":\"stand\"}", "");
              new Kits(in).create(KIT, title, "{\"gear\":[{\"id\":\"gear0001\"}]}", "");
              new Locations(in).create(LOCATION, title, "{}", "");
              StoredSetup setup = new Setups(in).create(SETUP, title, "{}", "");
              new Notes(in, SETUP).create(new NoteId("note0001"), "{}");
              new Takes(in, SETUP)
                  .create(
                      new Takes.NewTake(
                          new TakeId("take0001"),
                          1,
                          Instant.EPOCH,
                          LocalDate.EPOCH,
                          1,
                          "client-key",
                          "Take 1",
                          "{}"));
              return setup;
            });
  }

  @Test
  void theSameIdIsAnotherSetupInAnotherStudio() {
    assertEquals("Nora's", titleIn(noras, nora));
    assertEquals("Omar's", titleIn(omars, omar));
    database
        .open()
        .inStudio(
            noras, Asker.whole(nora), in -> new Setups(in).replace(SETUP, 1, "Changed", "{}", ""));
    assertEquals("Omar's", titleIn(omars, omar));
    database
        .open()
        .inStudio(
            noras, Asker.whole(nora), in -> new Setups(in).replace(SETUP, 2, "Nora's", "{}", ""));
  }

  private static String titleIn(StudioId studio, PersonId person) {
    return database
        .open()
        .inStudio(studio, Asker.whole(person), in -> new Setups(in).find(SETUP))
        .orElseThrow()
        .title();
  }

  @Test
  void whatIsOnlyInAnotherStudioIsNotThere() {
    SetupId only = new SetupId(database.ids().next());
    database
        .open()
        .inStudio(omars, Asker.whole(omar), in -> new Setups(in).create(only, "Secret", "{}", ""));
    database
        .open()
        .inStudio(
            noras,
            Asker.whole(nora),
            in -> {
              Setups setups = new Setups(in);
              assertTrue(setups.find(only).isEmpty());
              assertTrue(setups.listRevisions(only).isEmpty());
              assertTrue(setups.findRevision(only, 1).isEmpty());
              assertEquals(new Saving.Absent(), setups.replace(only, 1, "x", "{}", ""));
              assertEquals(new Saving.Absent(), setups.delete(only, 1, ""));
              assertEquals(
                  List.of("Nora's"),
                  setups.list(Optional.empty(), 10).items().stream()
                      .map(StoredSetup::title)
                      .toList());
              return setups.count();
            });
  }

  @Test
  void aSetupOfAnotherStudioIsNobodysParentHereAndListsNoChildrenOfHere() {
    SetupId only = new SetupId(database.ids().next());
    SetupId child = new SetupId(database.ids().next());
    database
        .open()
        .inStudio(omars, Asker.whole(omar), in -> new Setups(in).create(only, "Secret", "{}", ""));
    DataAccessException refusal =
        assertThrows(
            DataAccessException.class,
            () ->
                database
                    .open()
                    .inStudio(
                        noras,
                        Asker.whole(nora),
                        in -> new Setups(in).createFrom(only, 1, child, "Taken", "{}", "")));
    assertTrue(String.valueOf(refusal.getMessage()).contains("setup_comes_from_revision"));
    // Of two setups with one id the own is meant, and the other studio hears nothing of it.
    database
        .open()
        .inStudio(
            noras,
            Asker.whole(nora),
            in -> new Setups(in).createFrom(SETUP, 1, child, "Own", "{}", ""));
    assertEquals(
        Map.of(child, new Parent(SETUP, 1, "Nora's")),
        database
            .open()
            .inStudio(
                noras,
                Asker.whole(nora),
                in -> new Setups(in).listParents(List.of(child), Set.of(Standing.DRAFT))));
    assertEquals(
        List.of(),
        database
            .open()
            .inStudio(
                omars,
                Asker.whole(omar),
                in -> new Setups(in).listChildren(SETUP, Set.of(Standing.DRAFT), 10)));
    database.open().inStudio(noras, Asker.whole(nora), in -> new Setups(in).delete(child, 1, ""));
  }

  @Test
  void plainSqlOfTheWorkingRoleSeesNoRowWithoutAStudioAndItsOwnWithOne() throws SQLException {
    for (String table :
        List.of(
            "studio",
            "member",
            "setup",
            "setup_revision",
            "kit",
            "kit_revision",
            "gear",
            "gear_revision",
            "kit_gear",
            "location",
            "location_revision",
            "take",
            "take_revision",
            "note",
            "note_revision",
            "made_once")) {
      String key = table.equals("studio") ? "id" : "studio_id";
      assertEquals(List.of(), database.sql("select " + key + " from lampwright." + table));
      assertEquals(
          List.of(noras.text()),
          database.sql(
              "begin",
              "select set_config('lampwright.studio', '" + noras + "', true)",
              "select distinct " + key + " from lampwright." + table));
    }
  }

  @Test
  void aPooledConnectionRemembersNoStudio() {
    try (Database one = new Database(database.where(), 1, Clock.systemUTC())) {
      for (int round = 0; round < 3; round++) {
        assertEquals(
            Optional.of("Nora's"),
            one.inStudio(noras, Asker.whole(nora), in -> new Setups(in).find(SETUP))
                .map(StoredSetup::title));
        assertThrows(
            IllegalStateException.class,
            () ->
                one.inStudio(
                    noras,
                    Asker.whole(nora),
                    in -> {
                      throw new IllegalStateException("in the middle");
                    }));
        assertEquals(0, countWithoutStudio(one));
        assertEquals(
            Optional.of("Omar's"),
            one.inStudio(omars, Asker.whole(omar), in -> new Setups(in).find(SETUP))
                .map(StoredSetup::title));
        assertEquals(0, countWithoutStudio(one));
        assertEquals(
            2,
            one.<Long>asIndexer(
                in ->
                    new ChangeLog(in)
                        .streamSetups()
                        .filter(s -> s.setup().id().equals(SETUP))
                        .count()));
        assertEquals(0, countWithoutStudio(one));
      }
    }
  }

  private static int countWithoutStudio(Database one) {
    return one.anonymous(in -> in.sql().fetchCount(lampwright.schema.generated.Tables.SETUP));
  }

  @Test
  void aRowCannotBeMovedOrPutIntoAnotherStudio() {
    DataAccessException refusal =
        assertThrows(
            DataAccessException.class,
            () ->
                database
                    .open()
                    .inStudio(
                        noras,
                        Asker.whole(nora),
                        in ->
                            in.sql()
                                .execute(
                                    "insert into lampwright.member values ({0}, {1}, 'owner',"
                                        + " now())",
                                    org.jooq.impl.DSL.val(omars.text()),
                                    org.jooq.impl.DSL.val(nora.text()))));
    assertTrue(String.valueOf(refusal.getMessage()).contains("row-level security"));
  }
}
