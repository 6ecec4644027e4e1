package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lampwright.engine.unit.Seconds;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/**
 * What a kit has tonight, counted plainly: heads, modifiers, gels, stands that reach a height,
 * outlets and energies of packs, in this order.
 */
final class StatedKit {

  final List<Kind> heads = new ArrayList<>();
  final List<Several<Modifier>> modifiers;
  final List<Several<Gel>> gels;
  final List<Pack> packs = new ArrayList<>();

  private final SetupDocument setup;
  private final Kit kit;
  private final Wishes wishes;
  private final List<Double> packCharges = new ArrayList<>();

  /** Heads of a kind that work, with the charges that each has. */
  record Kind(Head head, int count, double charges) {}

  StatedKit(SetupDocument setup, Kit kit, Wishes wishes) {
    this.setup = setup;
    this.kit = kit;
    this.wishes = wishes;
    for (Several<Head> several : counted(kit.heads())) {
      Head head = several.item();
      int count = several.count() - dead(head.name());
      if (count > 0) {
        heads.add(new Kind(head, count, charges(head.name(), head.feed(), head.batteries())));
      }
    }
    for (Several<Pack> several : kit.packs()) {
      Pack pack = several.item();
      for (int i = 0; i < several.count() - dead(pack.name()); i++) {
        packs.add(pack);
        packCharges.add(charges(pack.name(), pack.feed(), pack.batteries()));
      }
    }
    this.modifiers = counted(kit.modifiers());
    this.gels = counted(kit.gels());
  }

  private static <G> List<Several<G>> counted(List<Several<G>> all) {
    Map<G, Integer> counts = new LinkedHashMap<>();
    all.forEach(several -> counts.merge(several.item(), several.count(), Integer::sum));
    return counts.entrySet().stream().map(e -> new Several<>(e.getValue(), e.getKey())).toList();
  }

  private Optional<HeadTonight> tonight(String name) {
    return wishes.tonight().stream().filter(state -> state.head().equals(name)).findFirst();
  }

  private int dead(String name) {
    return tonight(name).map(HeadTonight::dead).orElse(0);
  }

  private double charges(String name, Head.Feed feed, int batteries) {
    if (feed == Head.Feed.MAINS) {
      return Double.POSITIVE_INFINITY;
    }
    return batteries - 1 + tonight(name).map(HeadTonight::chargeShare).orElse(1.0);
  }

  private Optional<Double> paceS() {
    return wishes
        .limits()
        .betweenFrames()
        .or(() -> setup.plan().flatMap(Plan::betweenFrames))
        .map(Seconds::value);
  }

  private Optional<Integer> frames() {
    return wishes.limits().frames().or(() -> setup.plan().flatMap(Plan::frames));
  }

  List<Double> standHeightsM() {
    return kit.stands().stream().map(several -> several.item().highest().value()).toList();
  }

  /** How far a head of its own must be turned down to last and to be ready. */
  double leastDown(int kind, int pops) {
    Head head = heads.get(kind).head();
    double down = 0;
    if (paceS().isPresent() && CostForTests.recycleS(head.recycle()) > 0) {
      double recycle = CostForTests.recycleS(head.recycle()) * pops;
      down = Math.max(down, CostForTests.log2(recycle / paceS().get()));
    }
    boolean battery = head.feed() == Head.Feed.BATTERY;
    if (battery && frames().isPresent() && head.flashesPerCharge().isPresent()) {
      double flashes = head.flashesPerCharge().get() * heads.get(kind).charges();
      down = Math.max(down, CostForTests.log2(frames().get() * pops / flashes));
    }
    return down;
  }

  int modifier(int index) {
    return heads.size() + index;
  }

  int gel(int index) {
    return modifier(modifiers.size()) + index;
  }

  int stands(int height) {
    return gel(gels.size()) + height;
  }

  int outlets(int pack, int heights) {
    return stands(heights) + pack;
  }

  int energy(int pack, int heights) {
    return outlets(packs.size(), heights) + pack;
  }

  /**
   * How much there is of everything.
   *
   * @param heightsM at which lights may stand
   */
  List<Double> supplies(List<Double> heightsM) {
    return Stream.of(
            heads.stream().mapToDouble(Kind::count),
            modifiers.stream().mapToDouble(Several::count),
            gels.stream().mapToDouble(Several::count),
            heightsM.stream().mapToDouble(this::standsToM),
            packs.stream().mapToDouble(Pack::outlets),
            DoubleStream.iterate(0, p -> p < packs.size(), p -> p + 1)
                .map(p -> packEnergyWs((int) p)))
        .flatMap(DoubleStream::boxed)
        .toList();
  }

  private double standsToM(double height) {
    return kit.stands().stream()
        .filter(several -> several.item().highest().value() >= height)
        .mapToInt(Several::count)
        .sum();
  }

  /** What a pack can give for each frame, in time and for all frames. */
  private double packEnergyWs(int p) {
    Pack pack = packs.get(p);
    double share = 1;
    if (paceS().isPresent() && pack.recycle().isPresent()) {
      share = Math.min(share, paceS().get() / pack.recycle().get().value());
    }
    if (frames().isPresent() && pack.flashesPerCharge().isPresent()) {
      double flashes = pack.flashesPerCharge().get() * packCharges.get(p);
      share = Math.min(share, flashes / frames().get());
    }
    return pack.energy().value() * share;
  }
}
