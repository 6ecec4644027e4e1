package lampwright.setup.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.engine.unit.Amperes;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** Which batteries a day empties. */
class BatteryPlanTest {

  private static final DemoSeeds DEMO = new DemoSeeds();

  /** n · 2^s flashes to a charge: what {@code FlashBudget} says, from the other side. */
  @Test
  void aHeadTakesItsFlashesShareOfACharge() {
    SetupDocument setup = DEMO.setup("over-the-cut");
    for (BatteryPlan.Feed feed : plan(List.of(setup), false).feeds()) {
      BatteryPlan.Use use = feed.uses().getFirst();
      var light =
          setup.lights().stream().filter(l -> l.id().equals(use.light())).findFirst().orElseThrow();
      double toACharge =
          light.head().flashesPerCharge().orElseThrow()
              * Math.pow(2, light.stopsDown().orElseThrow().value());
      assertEquals((use.frames() + use.testPops()) * light.pops() / toACharge, use.charges(), 1e-9);
    }
  }

  @Test
  void everyHeadOnABatteryHasItsOwn() {
    assertEquals(7, plan(List.of(DEMO.setup("over-the-cut")), false).feeds().size());
  }

  @Test
  void setupsShotOneAfterTheOtherDrawOnTheSameBattery() {
    SetupDocument setup = DEMO.setup("over-the-cut");
    BatteryPlan once = plan(List.of(setup), false);
    BatteryPlan thrice = plan(List.of(setup, setup, setup), false);
    assertEquals(once.feeds().size(), thrice.feeds().size());
    assertEquals(3 * once.feeds().getFirst().charges(), thrice.feeds().getFirst().charges(), 1e-9);
  }

  @Test
  void aBatteryIsNeverAskedForMoreThanItGives() {
    List<SetupDocument> day = List.copyOf(DEMO.setups().values()).subList(0, 24);
    for (boolean isCold : List.of(false, true)) {
      double usable = (1 - BatteryPlan.KEPT_BACK) * (isCold ? BatteryPlan.LEFT_IN_THE_COLD : 1);
      for (BatteryPlan.Feed feed : plan(day, isCold).feeds()) {
        assertTrue(feed.charges() <= feed.batteries() * usable + 1e-9, feed.name());
      }
    }
  }

  @Test
  void theColdTakesMoreBatteries() {
    List<SetupDocument> day = List.copyOf(DEMO.setups().values()).subList(0, 24);
    int warm = plan(day, false).toCharge().values().stream().mapToInt(n -> n).sum();
    int cold = plan(day, true).toCharge().values().stream().mapToInt(n -> n).sum();
    assertTrue(cold > warm, cold + " against " + warm);
  }

  /** Worked by hand: I = P / (V pf) is told by the figures; circuits are whole. */
  @Test
  void theMainsWantAsManyCircuitsAsTheirCurrentFills() {
    SetupDocument setup = DEMO.setup("coat-thrown");
    BatteryPlan plan =
        BatteryPlanning.of(List.of(setup), List.of(), List.of(Optional.of(new Amperes(10))), false);
    MainsNeed need = plan.onMains().getFirst();
    int circuits = need.circuits().orElseThrow();
    double current = need.figures().current().value();
    assertTrue(circuits * 10 >= current && (circuits - 1) * 10 < current);
  }

  private static BatteryPlan plan(List<SetupDocument> setups, boolean isCold) {
    return BatteryPlanning.of(
        setups,
        List.of(),
        Stream.generate(Optional::<Amperes>empty).limit(setups.size()).toList(),
        isCold);
  }
}
