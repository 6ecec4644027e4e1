package lampwright.setup.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.setup.DemoSeeds;
import lampwright.setup.LightId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.SunComputation;
import org.junit.jupiter.api.Test;

/** Who does what when; the lengths of work are the usual ones. */
class DayPlanTest {

  private static final DemoSeeds DEMO = new DemoSeeds();
  private static final Instant DUSK = Instant.parse("2026-10-03T17:00:00Z");

  /** Worked by hand: ground 5, carry 3, stand 3, head 4, aim, meter, run-through 8, subject 3. */
  @Test
  void oneLightAndManyHandsTakeTheLongestChainByHand() {
    SetupDocument setup = oneLight();
    Stage build = plan(List.of(setup), 4, Optional.of(DUSK)).stages().getFirst();
    int at =
        setup.buildOrder().stream().map(step -> step.light().isPresent()).toList().indexOf(true);
    int stepsAfter = setup.buildOrder().size() - 1 - at;
    int stand = setup.lights().getFirst().stand().isPresent() ? 3 : 0;
    int aimed = 5 + 3 + stand + 4 + 2;
    assertEquals(Math.max(aimed, 5 + 3 * at) + 2 + 3 * stepsAfter + 8 + 3, build.minutes());
    assertTrue(build.isShortest());
  }

  @Test
  void theSetupStandsReadyWithTheReserveBeforeItsLight() {
    DayPlan plan = plan(List.of(DEMO.setup("over-the-cut")), 3, Optional.of(DUSK));
    Stage build = plan.stages().getFirst();
    assertEquals(Optional.of(DUSK.minus(Duration.ofMinutes(10))), plan.at(build.to()));
    assertEquals(Optional.of(DUSK), plan.at(plan.stages().get(1).from()));
    assertEquals(List.of(), plan.shortfalls());
  }

  @Test
  void stagesFollowOneAnotherWithStrikingAndMovingBetween() {
    List<SetupDocument> setups =
        List.of(DEMO.setup("salt-widow"), DEMO.setup("the-salt-magistrate"));
    DayPlan plan = DayPlan.of(setups, wishes(2, List.of(Optional.empty(), Optional.of(DUSK))));
    assertEquals(
        List.of(
            Stage.Kind.BUILD,
            Stage.Kind.SHOOT,
            Stage.Kind.STRIKE,
            Stage.Kind.MOVE,
            Stage.Kind.BUILD,
            Stage.Kind.SHOOT,
            Stage.Kind.STRIKE),
        plan.stages().stream().map(Stage::kind).toList());
    for (int i = 1; i < plan.stages().size(); i++) {
      assertTrue(plan.stages().get(i).from() >= plan.stages().get(i - 1).to());
    }
  }

  @Test
  void eachDemoSetupIsBuiltInAnOrderThatWaitsForWhatItMustWaitFor() {
    for (SetupDocument setup : DEMO.setups().values()) {
      Stage build = plan(List.of(setup), 3, Optional.of(DUSK)).stages().getFirst();
      Map<LightId, Map<Work, Stint>> byLight = new HashMap<>();
      for (Stint stint : build.stints()) {
        stint
            .errand()
            .light()
            .ifPresent(
                id ->
                    byLight
                        .computeIfAbsent(id, _ -> new HashMap<>())
                        .put(stint.errand().work(), stint));
      }
      int metered = 0;
      for (LightId light : setup.lightsInBuildOrder().stream().map(l -> l.id()).toList()) {
        Map<Work, Stint> of = byLight.getOrDefault(light, Map.of());
        Stint head = Objects.requireNonNull(of.get(Work.HEAD));
        Stint aim = Objects.requireNonNull(of.get(Work.AIM));
        Stint meter = Objects.requireNonNull(of.get(Work.METER));
        Optional.ofNullable(of.get(Work.STAND))
            .ifPresent(stand -> assertTrue(stand.to() <= head.from(), setup.title()));
        assertTrue(head.to() <= aim.from(), setup.title());
        assertTrue(aim.to() <= meter.from(), setup.title());
        assertTrue(metered <= meter.from(), setup.title());
        metered = meter.to();
      }
      Stint last = build.stints().getLast();
      assertEquals(Work.SUBJECT, last.errand().work(), setup.title());
      assertEquals(build.minutes(), last.to(), setup.title());
    }
  }

  @Test
  void nobodyIsInTwoPlacesAtOnce() {
    for (int hands = 1; hands <= 4; hands++) {
      Stage build =
          plan(List.of(DEMO.setup("one-chair-too-many")), hands, Optional.of(DUSK))
              .stages()
              .getFirst();
      List<Stint> stints = build.stints();
      for (int i = 0; i < stints.size(); i++) {
        Stint one = stints.get(i);
        assertEquals(one.errand().hands(), one.who().size());
        for (Stint other : stints.subList(i + 1, stints.size())) {
          boolean together = one.from() < other.to() && other.from() < one.to();
          boolean shared = one.who().stream().anyMatch(other.who()::contains);
          assertTrue(!together || !shared, hands + " hands: " + one + other);
        }
      }
    }
  }

  @Test
  void moreHandsNeverMakeADemoSetupLonger() {
    for (String name : List.of("over-the-cut", "the-swimmer-who-stayed", "salt-widow")) {
      int before = Integer.MAX_VALUE;
      for (int hands = 1; hands <= 5; hands++) {
        int now =
            plan(List.of(DEMO.setup(name)), hands, Optional.of(DUSK)).stages().getFirst().minutes();
        assertTrue(now <= before, name + " with " + hands);
        before = now;
      }
    }
  }

  @Test
  void whereTimeIsTooShortItSaysHowManyHandsWouldDo() {
    SetupDocument setup = DEMO.setup("over-the-cut");
    int alone = plan(List.of(setup), 1, Optional.of(DUSK)).stages().getFirst().minutes();
    int withThree = plan(List.of(setup), 3, Optional.of(DUSK)).stages().getFirst().minutes();
    DayWishes late =
        new DayWishes(
            1,
            WorkTimes.usual(),
            List.of(Optional.of(DUSK)),
            Optional.of(DUSK.minus(Duration.ofMinutes(withThree + 10))));
    DayPlan.Shortfall shortfall = DayPlan.of(List.of(setup), late).shortfalls().getFirst();
    assertEquals(alone - withThree, shortfall.minutes());
    assertTrue(shortfall.enoughHands().orElseThrow() <= 3);
  }

  @Test
  void whatNoNumberOfHandsCanDoIsSaidSo() {
    DayWishes late =
        new DayWishes(
            2,
            WorkTimes.usual(),
            List.of(Optional.of(DUSK)),
            Optional.of(DUSK.minus(Duration.ofMinutes(5))));
    DayPlan plan = DayPlan.of(List.of(DEMO.setup("over-the-cut")), late);
    assertEquals(Optional.empty(), plan.shortfalls().getFirst().enoughHands());
  }

  /** On the setup's own day the sun stands as it was at the setup's own time. */
  @Test
  void theSunAsItWasComesBackAtTheSetupsOwnTimeOnItsOwnDay() {
    List<SetupDocument> underTheSun =
        DEMO.setups().values().stream()
            .filter(setup -> SunComputation.find(setup).isPresent())
            .limit(10)
            .toList();
    for (SetupDocument setup : underTheSun) {
      Occasion occasion = setup.occasion().orElseThrow();
      Instant then = SunComputation.find(setup).orElseThrow().at();
      Optional<Instant> again =
          new WantedLight.SunAsItWas()
              .find(setup, occasion.date().orElseThrow(), occasion.utcOffset().orElseThrow());
      long seconds = Duration.between(then, again.orElseThrow()).abs().toSeconds();
      assertTrue(seconds <= 60, setup.title() + ": " + seconds + " s apart");
    }
  }

  @Test
  void aTypedTimeIsByTheClocksOfThePlace() {
    SetupDocument setup = DEMO.setup("before-the-hail");
    Occasion occasion = setup.occasion().orElseThrow();
    assertEquals(
        Optional.of(Instant.parse("2017-07-22T15:35:00Z")),
        new WantedLight.At(LocalTime.of(16, 35))
            .find(setup, occasion.date().orElseThrow(), occasion.utcOffset().orElseThrow()));
  }

  private static SetupDocument oneLight() {
    return DEMO.setups().values().stream()
        .filter(setup -> setup.lights().size() == 1)
        .findFirst()
        .orElseThrow();
  }

  private static DayPlan plan(List<SetupDocument> setups, int hands, Optional<Instant> light) {
    return DayPlan.of(setups, wishes(hands, Stream.of(light).toList()));
  }

  private static DayWishes wishes(int hands, List<Optional<Instant>> wanted) {
    return new DayWishes(hands, WorkTimes.usual(), wanted, Optional.empty());
  }
}
