package lampwright.learning.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.learning.drill.DrillKind;
import lampwright.people.PersonId;
import lampwright.people.Role;
import org.junit.jupiter.api.Test;

/** How far somebody has come on a trail, and who may say so. */
class WayTest {

  private static final PersonId ASSISTANT = new PersonId("assistant");
  private static final PersonId AUTHOR = new PersonId("author");
  private static final Instant THEN = Instant.parse("2030-05-01T18:00:00Z");

  private static final Trail TRAIL =
      read(
          """
          {"name": "Two heads", "clears_for": "set two heads", "stages": [
            {"kind": "reading", "id": "stop", "title": "A stop", "text": "Twice the light."},
            {"kind": "drills", "id": "count", "title": "Count", "kinds": ["stops_between", "sync"], "right": 2},
            {"kind": "build", "id": "build", "title": "Build", "setup": "rope", "task": "Build it."}]}
          """);

  private static Trail read(String json) {
    return switch (Trail.FORM.read(Json.parse(json))) {
      case Reading.Sound<Trail>(Trail trail) -> trail;
      case Reading.Faulty<Trail> faulty -> throw new AssertionError(faulty.problems());
    };
  }

  private static List<String> wrong(String json) {
    return Trail.FORM.read(Json.parse(json)) instanceof Reading.Faulty<Trail> faulty
        ? faulty.problems().stream().map(p -> p.pointer() + ": " + p.message()).toList()
        : List.of();
  }

  private static List<Way.State> states(
      Set<StageId> done, Map<DrillKind, Integer> right, HandedIn... builds) {
    return way(done, right, builds).steps().stream().map(Way.Step::state).toList();
  }

  private static Way way(Set<StageId> done, Map<DrillKind, Integer> right, HandedIn... builds) {
    return Way.of(TRAIL, new Way.Facts(done, right, List.of(builds)));
  }

  private static HandedIn waits(int second) {
    return new HandedIn(
        new StageId("build"), ASSISTANT, THEN.plusSeconds(second), Optional.empty());
  }

  private static HandedIn built(int second, boolean signedOff) {
    return new HandedIn(
        new StageId("build"),
        ASSISTANT,
        THEN.plusSeconds(second),
        Optional.of(new HandedIn.Judgement(signedOff, AUTHOR, THEN.plusSeconds(second + 5), "")));
  }

  private static final Set<StageId> READ = Set.of(new StageId("stop"));
  private static final Map<DrillKind, Integer> BOTH =
      Map.of(DrillKind.STOPS_BETWEEN, 2, DrillKind.SYNC, 7);

  @Test
  void stagesAreDoneOneAfterTheOther() {
    assertEquals(
        List.of(Way.State.OPEN, Way.State.AHEAD, Way.State.AHEAD), states(Set.of(), Map.of()));
    assertEquals(
        List.of(Way.State.DONE, Way.State.OPEN, Way.State.AHEAD),
        states(READ, Map.of(DrillKind.SYNC, 7)),
        "each kind counts for itself");
    assertEquals(List.of(Way.State.DONE, Way.State.DONE, Way.State.OPEN), states(READ, BOTH));
  }

  @Test
  void aBuildWaitsIsSentBackOrSignedOff() {
    assertEquals(Way.State.WAITS, states(READ, BOTH, waits(1)).getLast());
    assertEquals(Way.State.SENT_BACK, states(READ, BOTH, built(1, false)).getLast());
    assertEquals(Way.State.WAITS, states(READ, BOTH, waits(9), built(1, false)).getLast());
    assertEquals(Way.State.DONE, states(READ, BOTH, built(1, false), built(9, true)).getLast());
  }

  @Test
  void whoHasWalkedAllOfItIsClearedByWhoSignedOff() {
    assertTrue(way(READ, BOTH, waits(1)).clearance().isEmpty());
    assertTrue(way(READ, Map.of(), built(1, true)).clearance().isEmpty(), "drills are missing");
    assertEquals(
        Optional.of(new Way.Clearance("set two heads", AUTHOR, THEN.plusSeconds(14))),
        way(READ, BOTH, built(9, true)).clearance());
  }

  @Test
  void nobodySignsThemselvesOffWhateverTheirRole() {
    HandedIn build = waits(1);
    for (Role role : Role.values()) {
      assertEquals(Optional.of(HandedIn.Bar.OWN), build.bar(ASSISTANT, role));
    }
    assertEquals(Optional.empty(), build.bar(AUTHOR, Role.AUTHOR));
    assertEquals(Optional.empty(), build.bar(AUTHOR, Role.OWNER));
    assertEquals(Optional.of(HandedIn.Bar.ROLE), build.bar(AUTHOR, Role.CREW));
    assertEquals(Optional.of(HandedIn.Bar.ROLE), build.bar(AUTHOR, Role.READER));
    assertEquals(Optional.of(HandedIn.Bar.JUDGED), built(1, true).bar(AUTHOR, Role.OWNER));
  }

  @Test
  void aTrailThatIsNoneIsToldWithItsField() {
    assertEquals(
        List.of("/stages/1/id: Id (\"a\") is another stage's already. Maybe \"a-2\"?"),
        wrong(
            """
            {"name": "x", "stages": [
              {"kind": "reading", "id": "a", "title": "x", "text": "x"},
              {"kind": "reading", "id": "a", "title": "x", "text": "x"}]}
            """));
    assertEquals(
        List.of(
            "/clears_for: Nobody is cleared by reading alone: add a stage that is built, or leave"
                + " it out."),
        wrong(
            """
            {"name": "x", "clears_for": "everything", "stages": [
              {"kind": "reading", "id": "a", "title": "x", "text": "x"}]}
            """));
  }

  @Test
  void aTrailIsWrittenAsItWasRead() {
    assertEquals(TRAIL, read(Json.print(Trail.FORM.write(TRAIL))));
  }
}
