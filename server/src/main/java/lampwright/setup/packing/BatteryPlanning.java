package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.setup.Light;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.figures.MainsComputation;

/** Plans the batteries of a day: which head takes what, and when its battery is changed. */
public final class BatteryPlanning {

  /** To meter a light alone: common practice, no source. */
  private static final int POPS_TO_METER = 3;

  /** At each mark of the run-through, and the fewest of it: common practice, no source. */
  private static final int POPS_A_MARK = 2;

  private static final int POPS_TO_RUN_THROUGH = 4;

  private record Unit(String name, int number) {}

  private final List<Kit> kits;
  private final double usable;
  private final Map<Unit, List<BatteryPlan.Use>> uses = new LinkedHashMap<>();
  private final Map<String, Integer> there = new HashMap<>();
  private final List<BatteryPlan.Unknown> unknown = new ArrayList<>();

  private BatteryPlanning(List<Kit> kits, boolean isCold) {
    this.kits = kits;
    usable = (1 - BatteryPlan.KEPT_BACK) * (isCold ? BatteryPlan.LEFT_IN_THE_COLD : 1);
  }

  /**
   * The plan for setups in the order of the day.
   *
   * @param kits that come along; they say what a pack holds
   * @param circuit what one circuit carries where each setup is shot, in the same order
   * @param isCold whether it is about 0 °C
   */
  public static BatteryPlan of(
      List<SetupDocument> setups, List<Kit> kits, List<Optional<Amperes>> circuit, boolean isCold) {
    BatteryPlanning planning = new BatteryPlanning(kits, isCold);
    List<MainsNeed> mains = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      int setup = i;
      planning.add(setup, setups.get(setup));
      MainsComputation.mains(setups.get(setup))
          .ifPresent(
              figures ->
                  mains.add(
                      new MainsNeed(
                          setup,
                          figures,
                          circuit
                              .get(setup)
                              .map(
                                  one ->
                                      (int) Math.ceil(figures.current().value() / one.value())))));
    }
    List<BatteryPlan.Feed> feeds = new ArrayList<>();
    planning.uses.forEach(
        (unit, used) ->
            feeds.add(
                new BatteryPlan.Feed(
                    unit.name(),
                    unit.number(),
                    planning.there.getOrDefault(unit.name(), 1),
                    used,
                    planning.changes(used))));
    return new BatteryPlan(feeds, planning.unknown, mains);
  }

  private void add(int setup, SetupDocument document) {
    List<Light> lights = document.lightsInBuildOrder();
    Map<String, Integer> taken = new HashMap<>();
    for (int i = 0; i < lights.size(); i++) {
      Light light = lights.get(i);
      Optional<Pack> pack = light.head().pack().flatMap(this::findPack);
      Head.Feed feed = pack.map(Pack::feed).orElse(light.head().feed());
      Optional<Double> share = pack.map(p -> ofPack(light, p)).orElseGet(() -> ofHead(light));
      if (feed == Head.Feed.MAINS) {
        continue;
      }
      if (share.isEmpty()) {
        unknown.add(new BatteryPlan.Unknown(setup, light.id()));
        continue;
      }
      String name = pack.map(Pack::name).orElse(light.head().name());
      there.putIfAbsent(name, pack.map(Pack::batteries).orElse(light.head().batteries()));
      int tests = testPops(document, lights.size() - 1 - i);
      for (int head = 0; head < light.heads(); head++) {
        int count = taken.merge(name, 1, Integer::sum);
        int number = pack.map(p -> (count + p.outlets() - 1) / p.outlets()).orElse(count);
        uses.computeIfAbsent(new Unit(name, number), _ -> new ArrayList<>())
            .add(use(setup, document, light, tests, share.get()));
      }
    }
  }

  private static BatteryPlan.Use use(
      int setup, SetupDocument document, Light light, int tests, double share) {
    Optional<Integer> planned = document.plan().flatMap(Plan::frames);
    int frames = planned.orElse(BatteryPlan.USUAL_FRAMES);
    Stops down = light.stopsDown().orElse(Stops.ZERO);
    return new BatteryPlan.Use(
        setup,
        light.id(),
        frames,
        planned.isPresent(),
        tests,
        light.head().energy().down(down).value(),
        share * light.pops() * (frames + tests));
  }

  /** Its own metering, once with each light after it, and the run-through. */
  private static int testPops(SetupDocument document, int lightsAfter) {
    int marks =
        document.subjects().stream().map(Subject::path).mapToInt(List::size).max().orElse(0);
    return POPS_TO_METER + lightsAfter + Math.max(POPS_TO_RUN_THROUGH, POPS_A_MARK * marks);
  }

  /** The share of a charge that one flash of one head takes. */
  private static Optional<Double> ofHead(Light light) {
    return light
        .head()
        .flashesPerCharge()
        .flatMap(atFull -> light.stopsDown().map(down -> down.negated().toFactor() / atFull));
  }

  private static Optional<Double> ofPack(Light light, Pack pack) {
    return pack.flashesPerCharge()
        .flatMap(
            atFull ->
                light
                    .stopsDown()
                    .map(
                        down ->
                            light.head().energy().down(down).value()
                                / (pack.energy().value() * atFull)));
  }

  private Optional<Pack> findPack(String name) {
    return kits.stream()
        .flatMap(kit -> kit.packs().stream())
        .map(Several::item)
        .filter(pack -> pack.name().equals(name))
        .findFirst();
  }

  /**
   * A battery is changed before a setup that it would not last through, and within a setup only
   * where no battery lasts through it.
   */
  private List<BatteryPlan.Change> changes(List<BatteryPlan.Use> uses) {
    List<BatteryPlan.Change> changes = new ArrayList<>();
    double left = usable;
    for (int from = 0; from < uses.size(); ) {
      int to = from;
      double need = 0;
      BatteryPlan.Use first = uses.get(from);
      while (to < uses.size() && uses.get(to).setup() == first.setup()) {
        need += uses.get(to++).charges();
      }
      if (need > left && left < usable) {
        changes.add(new BatteryPlan.Change(first.setup(), 0));
        left = usable;
      }
      double aFlash = need / (first.frames() + first.testPops());
      for (double gone = left; gone < need; gone += usable) {
        int flashes = (int) Math.floor(gone / aFlash);
        changes.add(new BatteryPlan.Change(first.setup(), Math.max(0, flashes - first.testPops())));
        left += usable;
      }
      left -= need;
      from = to;
    }
    return changes;
  }
}
