package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.gear.Several;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.figures.LightComputation;
import lampwright.setup.figures.LightFigures;

/** Every way to make one light, written down plainly: no order, no bounds, nothing left out. */
final class StatedLight {

  private final StatedProblem problem;
  private final LightFigures was;
  private final Light light;
  private final Limits limits;
  private final Optional<Pin> pin;

  /**
   * A way to make a light, but for its power.
   *
   * @param kind which head of the kit
   * @param fullStops the level at full power, in stops above 1 lx·s
   * @param cost whatever the power
   * @param recycleS until ready after one flash at full power; 0 on a pack
   * @param leastDown what battery and pace leave, in stops below full
   * @param taken of the kit, but for a pack's energy
   * @param pack which one; -1 for none
   * @param energyWs for one picture at full power
   * @param seenBy body and lens pairs that would have it in the picture
   */
  record Way(
      int kind,
      Head head,
      int pops,
      double fullStops,
      double cost,
      double recycleS,
      double leastDown,
      Taken taken,
      int pack,
      double energyWs,
      BitSet seenBy) {

    List<Stops> steps() {
      return new PowerRange(head.range(), head.step()).settings();
    }
  }

  StatedLight(StatedProblem problem, LightFigures was) {
    this.problem = problem;
    this.was = was;
    this.light = was.light();
    this.limits = problem.wishes.limits();
    this.pin = problem.wishes.pins().stream().filter(p -> p.light().equals(light.id())).findFirst();
  }

  double wantedStops() {
    return was.inPicture()
        .map(level -> level.stopsOver(problem.before.shootingExposure()).value())
        .orElse(0.0);
  }

  boolean mayBeLeftOut() {
    return limits.mayGiveUp().contains(light.id()) || pin.filter(p -> !p.lit()).isPresent();
  }

  List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    if (was.level().isEmpty() || pin.filter(p -> !p.lit()).isPresent()) {
      return ways;
    }
    for (Point place : places()) {
      for (int m = -1; m < problem.gear.modifiers.size(); m++) {
        for (int h = 0; h < problem.gear.heads.size(); h++) {
          for (List<Gel> gels : gels()) {
            add(ways, place, m, h, gels);
          }
        }
      }
    }
    return ways;
  }

  /**
   * Where it is; by thirds of a stop nearer and farther, to 5 cm; lower, on some stand. To the last
   * digit as the search has them, because the levels of large beams jump by thousandths of a stop
   * otherwise.
   */
  List<Point> places() {
    List<Point> places = new ArrayList<>(List.of(light.place()));
    Point target = light.target().at();
    double fromM = light.place().distanceTo(target).value();
    for (int thirds = -3; thirds <= 3 && limits.lightsMayMove(); thirds++) {
      double toM = Math.floor(fromM * StrictMath.pow(2, -thirds / 6.0) / 0.05 + 0.5) * 0.05;
      boolean nearEnough = toM >= fromM || toM >= limits.nearest().value();
      if (Math.abs(toM - fromM) > 0.025 && toM > 0 && nearEnough) {
        Point place = target.moved(UnitVector.between(target, light.place()), toM);
        if (place.z() >= 0) {
          places.add(place);
        }
      }
    }
    for (double height : problem.gear.standHeightsM()) {
      Point lowered = new Point(light.place().x(), light.place().y(), height);
      boolean far = lowered.distanceTo(target).value() >= limits.nearest().value();
      if (limits.lightsMayMove() && height < light.place().z() && far) {
        places.add(lowered);
      }
    }
    return places.stream().distinct().toList();
  }

  /** None for none; else the kit's own set, each of the three nearest, and none. */
  List<List<Gel>> gels() {
    List<Gel> kit = problem.gear.gels.stream().map(Several::item).toList();
    if (light.gels().isEmpty()) {
      return List.of(List.of());
    }
    if (kit.isEmpty()) {
      return List.of(light.gels());
    }
    List<List<Gel>> all = new ArrayList<>();
    long different = light.gels().stream().distinct().count();
    if (light.gels().size() > 1 && different == light.gels().size()) {
      if (kit.containsAll(light.gels())) {
        all.add(light.gels());
      }
    }
    double wanted = CostForTests.mired(light.gels());
    kit.stream()
        .sorted(Comparator.comparingDouble(gel -> Math.abs(gel.shift().value() - wanted)))
        .limit(3)
        .forEach(gel -> all.add(List.of(gel)));
    all.add(List.of());
    return all;
  }

  private void add(List<Way> ways, Point place, int m, int h, List<Gel> gels) {
    Modifier modifier = m < 0 ? Modifier.standardReflector() : problem.gear.modifiers.get(m).item();
    Head head = problem.gear.heads.get(h).head();
    if (isForbidden(place, modifier, head)) {
      return;
    }
    Optional<Output.ByReading> reading = problem.reading(head, modifier);
    double full =
        LightComputation.atTarget(problem.setup, at(place, gels), head, modifier, reading)
            .atFullPower()
            .value();
    if (full == 0) {
      return;
    }
    int most = Math.max(light.heads(), limits.headsPerLight());
    int flashes = problem.moves ? light.pops() : limits.popsPerLight().orElse(light.pops());
    for (int n = pin.flatMap(Pin::heads).orElse(1);
        n <= pin.flatMap(Pin::heads).orElse(most);
        n++) {
      for (int pops = light.pops(); pops <= Math.max(light.pops(), flashes); pops++) {
        double cost = problem.costs.making(was, head, modifier, n, pops, gels, place);
        Taken taken = taken(place, m, h, gels, n);
        double stops = CostForTests.log2(full * n * pops);
        BitSet seenBy = seenBy(place, modifier);
        if (head.pack().isEmpty()) {
          double recycle = CostForTests.recycleS(head.recycle());
          double down = problem.gear.leastDown(h, pops);
          ways.add(new Way(h, head, pops, stops, cost, recycle, down, taken, -1, 0, seenBy));
          continue;
        }
        for (int p = 0; p < problem.gear.packs.size(); p++) {
          if (head.pack().get().equals(problem.gear.packs.get(p).name())) {
            int outlets = problem.gear.outlets(p, problem.heightsM.size());
            Taken withPack = taken.plus(outlets, n);
            double energy = head.energy().value() * n * pops;
            ways.add(new Way(h, head, pops, stops, cost, 0, 0, withPack, p, energy, seenBy));
          }
        }
      }
    }
  }

  private boolean isForbidden(Point place, Modifier modifier, Head head) {
    boolean pinnedElse =
        pin.flatMap(Pin::head).filter(name -> !name.equals(head.name())).isPresent()
            || pin.flatMap(Pin::modifier).filter(name -> !name.equals(modifier.name())).isPresent();
    boolean fits =
        modifier.mount().isEmpty()
            || head.mount().isEmpty()
            || modifier.mount().get().equalsIgnoreCase(head.mount().get());
    Degrees size = modifier.face().angularSize(place.distanceTo(light.target().at()));
    double doublings =
        CostForTests.log2(Math.max(1, size.value()) / Math.max(1, was.angularSize().value()));
    boolean tooUnlike =
        limits.softnessWithin().filter(most -> Math.abs(doublings) > most + 1e-9).isPresent();
    return pinnedElse || !fits || tooUnlike;
  }

  private Taken taken(Point place, int m, int h, List<Gel> gels, int n) {
    Taken taken = new Taken(problem.supplies().size()).plus(h, n);
    if (m >= 0) {
      int takes = problem.gear.modifiers.get(m).item().takesHeads();
      taken = taken.plus(problem.gear.modifier(m), Math.ceil(n / (double) takes));
    }
    for (int g = 0; g < problem.gear.gels.size(); g++) {
      if (gels.contains(problem.gear.gels.get(g).item())) {
        taken = taken.plus(problem.gear.gel(g), n);
      }
    }
    for (int height = 0; height < problem.heightsM.size(); height++) {
      if (place.z() > 0.3 && place.z() >= problem.heightsM.get(height)) {
        taken = taken.plus(problem.gear.stands(height), 1);
      }
    }
    return taken;
  }

  /** A ball meets a cone where it is nearer to its side than its radius, by the side's normal. */
  private BitSet seenBy(Point place, Modifier modifier) {
    BitSet seenBy = new BitSet();
    Optional<Point> from = problem.setup.camera().flatMap(Camera::place);
    Optional<Point> aim = problem.setup.camera().flatMap(Camera::aim);
    if (from.isEmpty() || aim.isEmpty()) {
      return seenBy;
    }
    double radiusM = modifier.face().largestDimension().value() / 2;
    for (int p = 0; p < problem.pairs.size(); p++) {
      StatedCameras.Pair pair = problem.pairs.get(p);
      if (pair.body().isPresent() && pair.lens().isPresent()) {
        double side =
            Math.max(pair.body().get().width().value(), pair.body().get().height().value());
        // The corner of a square picture, for a camera that is held either way.
        double angle =
            StrictMath.atan(
                side / 2 * StrictMath.sqrt(2) / pair.lens().get().focalLength().value());
        if (isSeen(from.get(), aim.get(), angle, place, radiusM)
            && !isSeen(from.get(), aim.get(), angle, light.place(), radiusM)) {
          seenBy.set(p);
        }
      }
    }
    return seenBy;
  }

  private static boolean isSeen(Point from, Point aim, double angle, Point ball, double radiusM) {
    UnitVector axis = UnitVector.between(from, aim);
    double away = from.distanceTo(ball).value();
    double off = StrictMath.acos(UnitVector.between(from, ball).cosineTo(axis));
    double before = away * StrictMath.cos(off);
    return before > -radiusM && away * StrictMath.sin(off - angle) < radiusM;
  }

  private Light at(Point place, List<Gel> gels) {
    return new Light(
        light.id(),
        light.role(),
        light.reason(),
        light.head(),
        light.heads(),
        light.pops(),
        light.modifier(),
        light.output(),
        gels,
        place,
        light.placeKnown(),
        light.aim(),
        light.target(),
        light.stand(),
        light.stopsDown(),
        light.reading());
  }
}
