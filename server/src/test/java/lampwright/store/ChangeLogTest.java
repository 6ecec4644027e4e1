package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.unit.Degrees;
import lampwright.gear.KitId;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.place.LocationId;
import lampwright.setup.PictureId;
import lampwright.setup.SetupId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.parallel.Isolated;

/** What the search index is told, and that nothing is ever kept from it. */
@Isolated("An open transaction of any database of the same server holds every log back.")
class ChangeLogTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private final PersonId author = database.newPerson();
  private final StudioId studio = database.newStudio(author);
  private final Bookmark start =
      database.open().asIndexer(in -> new ChangeLog(in).newestBookmark());

  private SetupId create(String title) {
    SetupId id = new SetupId(database.ids().next());
    database
        .open()
        .inStudio(studio, Asker.whole(author), in -> new Setups(in).create(id, title, "{}", ""));
    return id;
  }

  private List<SetupChange> after(Bookmark bookmark) {
    return database.open().asIndexer(in -> new ChangeLog(in).setupChangesAfter(bookmark, 100));
  }

  @Test
  void everyChangeIsListedInOrderWithTheSetupAsItIsNow() {
    SetupId kept = create("Harbour");
    SetupId deleted = create("Dune");
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(author),
            in -> new Kits(in).create(new KitId("kit00001"), "Van", "{}", ""));
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(author),
            in -> new Setups(in).replace(kept, 1, "Pier", "{\"a\": 1}", ""));
    database
        .open()
        .inStudio(studio, Asker.whole(author), in -> new Setups(in).delete(deleted, 1, ""));

    List<SetupChange> changes = after(start);
    assertEquals(
        List.of(kept + " 1 Pier", deleted + " 1 gone", kept + " 2 Pier", deleted + " 2 gone"),
        changes.stream().map(ChangeLogTest::described).toList());
    assertEquals(changes.subList(2, 4), after(changes.get(1).at()));
    assertEquals(List.of(), after(changes.get(3).at()));
    assertEquals(
        changes.subList(0, 2),
        database.open().asIndexer(in -> new ChangeLog(in).setupChangesAfter(start, 2)));
    assertTrue(
        database.open().<Boolean>asIndexer(in -> new ChangeLog(in).reaches(changes.get(3).at())));
    assertFalse(
        database
            .open()
            .<Boolean>asIndexer(in -> new ChangeLog(in).reaches(new Bookmark(1, 1_000_000))));
  }

  private static String described(SetupChange change) {
    return "%s %d %s"
        .formatted(
            change.setup(),
            change.revision(),
            change.now().map(found -> found.setup().title()).orElse("gone"));
  }

  @Test
  void aTransactionThatCommitsLateIsNotPassedBy() throws Exception {
    try (Connection slow =
        DriverManager.getConnection(
            database.where().jdbcUrl(), database.where().user(), database.where().password())) {
      slow.setAutoCommit(false);
      try (Statement statement = slow.createStatement()) {
        statement.execute("select set_config('lampwright.studio', '" + studio + "', true)");
        statement.execute(
            "insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted)"
                + " values ('"
                + studio
                + "', 'setup', 'latecomer', 1, false)");
      }
      SetupId quick = create("Quick");
      // The quick one has a later number and is committed; to list it now would pass the slow by.
      assertEquals(List.of(), after(start));
      assertEquals(start, database.open().asIndexer(in -> new ChangeLog(in).newestBookmark()));
      slow.commit();
      assertEquals(
          List.of("latecomer", quick.text()),
          after(start).stream().map(change -> change.setup().text()).toList());
    }
  }

  @Test
  void aRebuildReadsEverySetupOfEveryStudioAsOfOneMoment() {
    PersonId other = database.newPerson();
    StudioId others = database.newStudio(other);
    SetupId first = create("Harbour");
    database
        .open()
        .inStudio(
            others,
            Asker.whole(other),
            in -> new Setups(in).create(new SetupId("theirs00"), "T", "{}", ""));
    SetupId gone = create("Dune");
    database.open().inStudio(studio, Asker.whole(author), in -> new Setups(in).delete(gone, 1, ""));

    try (IndexerTransaction in = database.open().beginAsIndexer()) {
      Bookmark asOf = new ChangeLog(in).newestBookmark();
      SetupId later = create("Later");
      try (Stream<SetupOfStudio> all = new ChangeLog(in).streamSetups()) {
        Set<SetupId> ids =
            all.filter(each -> Set.of(studio, others).contains(each.studio()))
                .map(each -> each.setup().id())
                .collect(Collectors.toSet());
        assertEquals(Set.of(first, new SetupId("theirs00")), ids);
      }
      assertTrue(new ChangeLog(in).countSetups() >= 2);
      assertEquals(List.of(later), after(asOf).stream().map(SetupChange::setup).toList());
    }
  }

  private void inStudio(Consumer<StudioTransaction> work) {
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(author),
            in -> {
              work.accept(in);
              return true;
            });
  }

  private PictureId picture(SetupId setup, String kind, String tones) {
    PictureId id = new PictureId(database.ids().next());
    StoredPicture.File file =
        new StoredPicture.File("0".repeat(64), 1, "image/jpeg", 1, 1, "{}", tones);
    inStudio(in -> new Pictures(in).create(id, setup, kind, "{}", file));
    return id;
  }

  /** What is told of a setup after a bookmark: of each line the tones of its picture. */
  private List<String> tonesAfter(Bookmark bookmark) {
    return after(bookmark).stream()
        .map(change -> change.revision() + " " + change.now().orElseThrow().tones().orElse("none"))
        .toList();
  }

  @Test
  void aSetupIsToldOfAgainWhenItsFinishedPictureIsAnother() {
    SetupId setup = create("Harbour");
    Bookmark created = after(start).getFirst().at();
    PictureId untouched = picture(setup, "untouched", "{\"a\": 1}");
    inStudio(in -> new Pictures(in).replace(untouched, 1, "untouched", "{\"caption\": \"x\"}"));
    assertEquals(List.of(), after(created));

    picture(setup, "final", "{\"a\": 2}");
    assertEquals(List.of("1 {\"a\": 2}"), tonesAfter(created));
    Bookmark first = after(created).getLast().at();
    inStudio(in -> new Pictures(in).replace(untouched, 2, "final", "{}"));
    assertEquals(List.of("1 {\"a\": 1}"), tonesAfter(first));
    Bookmark second = after(first).getLast().at();
    inStudio(in -> new Pictures(in).replace(untouched, 3, "reference", "{}"));
    assertEquals(List.of("1 {\"a\": 2}"), tonesAfter(second));
    Bookmark third = after(second).getLast().at();
    inStudio(in -> new Pictures(in).replace(untouched, 4, "final", "{}"));
    inStudio(in -> new Pictures(in).delete(untouched, 5));
    assertEquals(List.of("1 {\"a\": 2}", "1 {\"a\": 2}"), tonesAfter(third));
    inStudio(in -> assertEquals(new Saving.Absent(), new Pictures(in).delete(untouched, 6)));
    assertEquals(2, after(third).size());
    try (IndexerTransaction in = database.open().beginAsIndexer();
        Stream<SetupOfStudio> all = new ChangeLog(in).streamSetups()) {
      assertEquals(
          List.of("{\"a\": 2}"),
          all.filter(each -> each.setup().id().equals(setup))
              .map(each -> each.tones().orElseThrow())
              .toList());
    }
  }

  @Test
  void setupsAreToldOfAgainWhenTheirLocationMoves() {
    LocationId location = new LocationId(database.ids().next());
    inStudio(in -> new Locations(in).create(location, "Pier", at(53.2, 0.3), ""));
    SetupId there = new SetupId(database.ids().next());
    String named = "{\"occasion\": {\"place\": {\"location\": \"" + location + "\"}}}";
    inStudio(in -> new Setups(in).create(there, "Pier", named, ""));
    create("Elsewhere");
    Bookmark before = after(start).getLast().at();

    inStudio(in -> new Locations(in).replace(location, 1, "Old pier", at(53.2, 0.3), ""));
    assertEquals(List.of(), after(before));
    inStudio(in -> new Locations(in).replace(location, 2, "Old pier", at(-33.9, 18.4), ""));
    inStudio(in -> new Locations(in).replace(location, 2, "Old pier", at(0, 0), ""));
    List<SetupChange> moved = after(before);
    assertEquals(List.of(there + " 1 Pier"), moved.stream().map(ChangeLogTest::described).toList());
    assertEquals(
        Optional.of(PlaceOnEarth.of(new Degrees(-33.9), new Degrees(18.4))),
        moved.getFirst().now().orElseThrow().location());
    inStudio(in -> new Locations(in).delete(location, 3, ""));
    SetupChange gone = after(moved.getFirst().at()).getFirst();
    assertEquals(Optional.empty(), gone.now().orElseThrow().location());
  }

  private static String at(double latitude, double longitude) {
    return "{\"latitude_deg\": " + latitude + ", \"longitude_deg\": " + longitude + "}";
  }

  @Test
  void eachDatabaseHasAnIdentityThatStays() {
    String identity = database.open().asIndexer(in -> new ChangeLog(in).catalogueIdentity());
    create("Harbour");
    assertEquals(identity, database.open().asIndexer(in -> new ChangeLog(in).catalogueIdentity()));
    assertNotEquals("", identity);
  }

  @Test
  void aListenerHearsOfACommitAndOfNothingElse() {
    try (ChangeListener listener = database.open().listen()) {
      assertFalse(listener.await(Duration.ofMillis(20)));
      create("Harbour");
      assertTrue(listener.await(Duration.ofSeconds(20)));
      try {
        database
            .open()
            .inStudio(
                studio,
                Asker.whole(author),
                in -> {
                  new Setups(in).create(new SetupId(database.ids().next()), "x", "{}", "");
                  throw new IllegalStateException("taken back");
                });
      } catch (IllegalStateException expected) {
        assertFalse(listener.await(Duration.ofMillis(20)));
      }
    }
  }

  @Test
  void oneWhoFollowsWhileMissingNothingSeesEveryRevisionOfManyWriters() throws Exception {
    List<Thread> writers =
        Stream.generate(
                () ->
                    Thread.ofPlatform()
                        .unstarted(
                            () -> {
                              SetupId id = create("Round");
                              for (int revision = 1; revision < 15; revision++) {
                                int basedOn = revision;
                                database
                                    .open()
                                    .inStudio(
                                        studio,
                                        Asker.whole(author),
                                        in -> new Setups(in).replace(id, basedOn, "R", "{}", ""));
                              }
                            }))
            .limit(4)
            .toList();
    writers.forEach(Thread::start);
    Bookmark at = start;
    int seen = 0;
    boolean writing = true;
    while (true) {
      List<SetupChange> some = after(at);
      seen += some.size();
      if (!some.isEmpty()) {
        at = some.getLast().at();
      } else if (!writing) {
        break;
      }
      writing = writers.stream().anyMatch(Thread::isAlive);
    }
    assertEquals(4 * 15, seen);
    assertEquals(
        Optional.of(at),
        Optional.of(database.open().asIndexer(in -> new ChangeLog(in).newestBookmark())));
  }
}
