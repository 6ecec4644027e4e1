package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.IntStream;
import lampwright.gear.KitId;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.Child;
import lampwright.setup.Parent;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Setups and kits: revisions, stale changes, deletion, lists, and many writers at once. */
class SetupsTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  // JUnit makes the class anew for each test, so each has a studio of its own.
  private final PersonId author = database.newPerson();
  private final StudioId studio = database.newStudio(author);

  private <T> T inStudio(Function<StudioTransaction, T> work) {
    return database.open().inStudio(studio, Asker.whole(author), work);
  }

  private SetupId created(String title) {
    SetupId id = new SetupId(database.ids().next());
    inStudio(in -> new Setups(in).create(id, title, "{\"title\":\"" + title + "\"}", "first"));
    return id;
  }

  private StoredSetup found(SetupId id) {
    return inStudio(in -> new Setups(in).find(id)).orElseThrow();
  }

  @Test
  void aNewSetupIsReadBackAsItsRevision1() {
    SetupId id = new SetupId(database.ids().next());
    StoredSetup created =
        inStudio(in -> new Setups(in).create(id, "Harbour", "{\"a\": [1, 2.50]}", "first"));
    assertEquals(created, found(id));
    assertEquals(1, created.revision());
    assertEquals("{\"a\": [1, 2.50]}", created.document());
    assertEquals(author, created.changedBy());
  }

  @Test
  void aReplacementIsTheNextRevisionAndTheOldOneStays() {
    SetupId id = created("Harbour");
    assertEquals(
        new Saving.Saved(2),
        inStudio(in -> new Setups(in).replace(id, 1, "Pier", "{\"title\": \"Pier\"}", "moved")));
    assertEquals("Pier", found(id).title());
    assertEquals(2, found(id).revision());

    List<Revision> revisions = inStudio(in -> new Setups(in).listRevisions(id));
    assertEquals(List.of(2, 1), revisions.stream().map(Revision::number).toList());
    assertEquals("moved", revisions.getFirst().message());
    StoredRevision first = inStudio(in -> new Setups(in).findRevision(id, 1)).orElseThrow();
    assertEquals("{\"title\": \"Harbour\"}", first.document());
    assertEquals("Harbour", first.label());
    assertTrue(inStudio(in -> new Setups(in).findRevision(id, 3)).isEmpty());
  }

  @Test
  void aChangeOfAnOldRevisionIsStaleAndChangesNothing() {
    SetupId id = created("Harbour");
    inStudio(in -> new Setups(in).replace(id, 1, "Pier", "{}", ""));
    assertEquals(
        new Saving.Stale(2), inStudio(in -> new Setups(in).replace(id, 1, "Dune", "{}", "")));
    assertEquals(new Saving.Stale(2), inStudio(in -> new Setups(in).delete(id, 1, "")));
    assertEquals(
        new Saving.Stale(2), inStudio(in -> new Setups(in).replace(id, 7, "Dune", "{}", "")));
    assertEquals("Pier", found(id).title());
    assertEquals(2, inStudio(in -> new Setups(in).listRevisions(id)).size());
  }

  @Test
  void aDeletedSetupIsGoneButItsHistoryTellsWhoDidIt() {
    SetupId id = created("Harbour");
    assertEquals(new Saving.Saved(2), inStudio(in -> new Setups(in).delete(id, 1, "a mistake")));
    assertTrue(inStudio(in -> new Setups(in).find(id)).isEmpty());
    assertTrue(inStudio(in -> new Setups(in).list(Optional.empty(), 10)).items().isEmpty());
    assertEquals(0, this.<Integer>inStudio(in -> new Setups(in).count()));
    assertEquals(new Saving.Absent(), inStudio(in -> new Setups(in).delete(id, 2, "")));
    assertEquals(new Saving.Absent(), inStudio(in -> new Setups(in).replace(id, 2, "x", "{}", "")));
    Revision last = inStudio(in -> new Setups(in).listRevisions(id)).getFirst();
    assertTrue(last.deleted());
    assertEquals("a mistake", last.message());
    assertEquals(author, last.changedBy());
  }

  @Test
  void whatThereNeverWasIsAbsent() {
    SetupId id = new SetupId("never000");
    assertTrue(inStudio(in -> new Setups(in).find(id)).isEmpty());
    assertEquals(new Saving.Absent(), inStudio(in -> new Setups(in).replace(id, 1, "x", "{}", "")));
    assertTrue(inStudio(in -> new Setups(in).listRevisions(id)).isEmpty());
  }

  @Test
  void pagesShowEverySetupOnceLastChangedFirst() {
    List<SetupId> made = IntStream.range(0, 7).mapToObj(i -> created("Setup " + i)).toList();
    inStudio(in -> new Setups(in).replace(made.get(2), 1, "changed", "{}", ""));
    // Two that changed at the same moment are told apart by their id.
    inStudio(
        in -> {
          new Setups(in).create(new SetupId("same0001"), "a", "{}", "");
          return new Setups(in).create(new SetupId("same0002"), "b", "{}", "");
        });

    List<String> titles = new ArrayList<>();
    Optional<Page.Place> place = Optional.empty();
    int pages = 0;
    do {
      Optional<Page.Place> from = place;
      Page<StoredSetup> page = inStudio(in -> new Setups(in).list(from, 2));
      page.items().forEach(setup -> titles.add(setup.title()));
      place = page.next();
      pages++;
    } while (place.isPresent());
    assertEquals(
        List.of(
            "b", "a", "changed", "Setup 6", "Setup 5", "Setup 4", "Setup 3", "Setup 1", "Setup 0"),
        titles);
    assertEquals(5, pages);
    assertEquals(9, this.<Integer>inStudio(in -> new Setups(in).count()));
  }

  @Test
  void ofTwentyWritersOnOneRevisionOneWins() throws Exception {
    SetupId id = created("Harbour");
    List<Saving> outcomes =
        together(
            20,
            writer ->
                inStudio(in -> new Setups(in).replace(id, 1, "Writer " + writer, "{}", "race")));
    assertEquals(1, outcomes.stream().filter(new Saving.Saved(2)::equals).count());
    assertEquals(19, outcomes.stream().filter(new Saving.Stale(2)::equals).count());
    assertEquals(2, found(id).revision());
    assertEquals(2, inStudio(in -> new Setups(in).listRevisions(id)).size());
  }

  @Test
  void twentyWritersWhoTryAgainLoseNoChange() throws Exception {
    SetupId id = created("Harbour");
    inStudio(in -> new Setups(in).replace(id, 1, "Harbour", "{\"writers\": []}", ""));
    together(20, writer -> addWriter(id, writer));
    StoredSetup last = found(id);
    assertEquals(22, last.revision());
    for (int writer = 0; writer < 20; writer++) {
      assertTrue(last.document().contains("\"w" + writer + "\""), last.document());
    }
    Set<String> documents = new HashSet<>();
    for (Revision revision : inStudio(in -> new Setups(in).listRevisions(id))) {
      inStudio(in -> new Setups(in).findRevision(id, revision.number()))
          .ifPresent(stored -> documents.add(stored.document()));
    }
    assertEquals(22, documents.size());
  }

  private Saving addWriter(SetupId id, int writer) {
    while (true) {
      StoredSetup now = found(id);
      String more =
          now.document().contains("[]")
              ? now.document().replace("[]", "[\"w" + writer + "\"]")
              : now.document().replace("]", ", \"w" + writer + "\"]");
      Saving saving =
          inStudio(in -> new Setups(in).replace(id, now.revision(), "Harbour", more, ""));
      if (saving instanceof Saving.Saved) {
        return saving;
      }
    }
  }

  private static <T> List<T> together(int many, Function<Integer, T> work) throws Exception {
    CyclicBarrier start = new CyclicBarrier(many);
    try (ExecutorService threads = Executors.newFixedThreadPool(many)) {
      List<Callable<T>> calls =
          IntStream.range(0, many)
              .<Callable<T>>mapToObj(
                  i ->
                      () -> {
                        start.await();
                        return work.apply(i);
                      })
              .toList();
      List<T> results = new ArrayList<>();
      for (Future<T> result : threads.invokeAll(calls)) {
        results.add(result.get());
      }
      return results;
    }
  }

  @Test
  void aFailureKeepsNothingOfItsTransaction() {
    SetupId id = new SetupId(database.ids().next());
    IllegalStateException thrown = new IllegalStateException("afterwards");
    assertEquals(
        thrown,
        assertThrows(
            IllegalStateException.class,
            () ->
                inStudio(
                    in -> {
                      new Setups(in).create(id, "Harbour", "{}", "");
                      throw thrown;
                    })));
    assertTrue(inStudio(in -> new Setups(in).find(id)).isEmpty());
  }

  private SetupId createdFrom(SetupId parent, int revision, String title) {
    SetupId id = new SetupId(database.ids().next());
    inStudio(in -> new Setups(in).createFrom(parent, revision, id, title, "{}", ""));
    return id;
  }

  @Test
  void aSetupThatWasMadeFromAnotherNamesItAsItWasThen() {
    SetupId parent = created("Harbour");
    inStudio(in -> new Setups(in).replace(parent, 1, "Pier", "{}", ""));
    SetupId first = createdFrom(parent, 1, "By the small kit");
    SetupId second = createdFrom(parent, 2, "By the van");
    inStudio(in -> new Setups(in).delete(parent, 2, ""));
    assertEquals(
        Map.of(first, new Parent(parent, 1, "Harbour"), second, new Parent(parent, 2, "Pier")),
        inStudio(
            in ->
                new Setups(in)
                    .listParents(List.of(first, second, parent), Set.of(Standing.DRAFT))));
  }

  @Test
  void aSetupListsThoseThatWereMadeFromItAndAreThere() {
    SetupId parent = created("Harbour");
    SetupId first = createdFrom(parent, 1, "By the small kit");
    SetupId gone = createdFrom(parent, 1, "Soon gone");
    SetupId second = createdFrom(parent, 1, "By the van");
    SetupId grandchild = createdFrom(first, 1, "Once more");
    inStudio(in -> new Setups(in).delete(gone, 1, ""));
    assertEquals(
        List.of(second, first),
        inStudio(in -> new Setups(in).listChildren(parent, Set.of(Standing.DRAFT), 10)).stream()
            .map(Child::id)
            .toList());
    assertEquals(
        List.of(second),
        inStudio(in -> new Setups(in).listChildren(parent, Set.of(Standing.DRAFT), 1)).stream()
            .map(Child::id)
            .toList());
    assertEquals(
        List.of(grandchild),
        inStudio(in -> new Setups(in).listChildren(first, Set.of(Standing.DRAFT), 10)).stream()
            .map(Child::id)
            .toList());
  }

  @Test
  void aRevisionThatThereIsNotIsNobodysParent() {
    SetupId parent = created("Harbour");
    assertThrows(
        IntegrityConstraintViolationException.class, () -> createdFrom(parent, 2, "Too early"));
    assertTrue(
        inStudio(in -> new Setups(in).listChildren(parent, Set.of(Standing.DRAFT), 10)).isEmpty());
  }

  @Test
  void whatWasUsedIsARevisionThatNamesItsPlan() {
    SetupId id = created("Harbour");
    assertTrue(inStudio(in -> new Setups(in).findUsed(id)).isEmpty());
    inStudio(in -> new Setups(in).replaceByUsed(id, 1, 1, "Harbour", "{\"f\": 8}", "Fog."));
    inStudio(in -> new Setups(in).replace(id, 2, "Harbour", "{\"f\": 11}", ""));
    assertEquals(Optional.of(1), inStudio(in -> new Setups(in).findPlanned(id, 2)));
    assertEquals(Optional.empty(), inStudio(in -> new Setups(in).findPlanned(id, 3)));
    UsedRevision found = inStudio(in -> new Setups(in).findUsed(id)).orElseThrow();
    assertEquals("{\"title\": \"Harbour\"}", found.planned().document());
    assertEquals("{\"f\": 8}", found.used().document());
    assertEquals("Fog.", found.used().revision().message());
    assertEquals(2, found.used().revision().number());
  }

  @Test
  void kitsAreKeptTheSameWay() {
    KitId id = new KitId(database.ids().next());
    StoredKit made = inStudio(in -> new Kits(in).create(id, "Van", "{\"heads\": []}", ""));
    assertEquals(Optional.of(made), inStudio(in -> new Kits(in).find(id)));
    assertEquals(
        new Saving.Saved(2), inStudio(in -> new Kits(in).replace(id, 1, "Case", "{}", "")));
    assertEquals(new Saving.Stale(2), inStudio(in -> new Kits(in).replace(id, 1, "Bag", "{}", "")));
    assertEquals(
        List.of("Case"),
        inStudio(in -> new Kits(in).list(Optional.empty(), 5)).items().stream()
            .map(StoredKit::name)
            .toList());
    assertEquals(
        "{\"heads\": []}",
        inStudio(in -> new Kits(in).findRevision(id, 1)).orElseThrow().document());
    assertEquals(new Saving.Saved(3), inStudio(in -> new Kits(in).delete(id, 2, "")));
    assertTrue(inStudio(in -> new Kits(in).find(id)).isEmpty());
    assertEquals(3, inStudio(in -> new Kits(in).listRevisions(id)).size());
  }
}
