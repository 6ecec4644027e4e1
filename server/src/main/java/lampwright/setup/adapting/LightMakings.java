package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.Point;
import lampwright.engine.match.Uses;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.figures.LightComputation;
import lampwright.setup.figures.LightFigures;

/** Finds every way in which a kit can make one light, all but the power. */
final class LightMakings {

  /** A kit of hundreds of pieces has more combinations than anybody waits for. */
  static final int MOST_MAKINGS = 4_000;

  private final Gathering gathering;
  private final LightFigures figures;
  private final Light light;
  private final Optional<Pin> pin;
  private final double role;
  private final int fewestHeads;
  private final int mostHeads;
  private final int mostPops;
  private final List<GelChoice.Option> gels;
  private final List<Place> places;
  private final List<Making> makings = new ArrayList<>();
  private final Set<Said> refusals = new LinkedHashSet<>();

  /** Where a light may stand. */
  private record Place(Light light, Metres distance, boolean moved) {}

  /**
   * The ways to make a light.
   *
   * @param makings the likelier ones where there are too many
   * @param all whether these are all
   * @param refusals why there are none, in words; empty where there are some
   */
  record Found(List<Making> makings, boolean all, List<Said> refusals) {}

  private LightMakings(Gathering gathering, LightFigures figures) {
    this.gathering = gathering;
    this.figures = figures;
    this.light = figures.light();
    this.pin =
        gathering.wishes().pins().stream().filter(p -> p.light().equals(light.id())).findFirst();
    this.role = Weights.ofRole(light.role());
    Optional<Integer> pinned = pin.flatMap(Pin::heads);
    this.fewestHeads = pinned.orElse(1);
    this.mostHeads =
        pinned.orElse(Math.max(light.heads(), gathering.wishes().limits().headsPerLight()));
    this.mostPops = mostPops();
    this.gels = GelChoice.of(light.gels(), gathering.kit(), gathering.weights());
    this.places = places();
  }

  static Found of(Gathering gathering, LightFigures figures) {
    return new LightMakings(gathering, figures).find();
  }

  static PowerRange range(Head head) {
    return new PowerRange(head.range(), head.step());
  }

  /** More flashes than the setup's own only where nobody moves between them. */
  private int mostPops() {
    Optional<Integer> wished = gathering.wishes().limits().popsPerLight();
    return wished.isEmpty() || gathering.moving() ? light.pops() : wished.get();
  }

  private List<Place> places() {
    Optional<Point> tried =
        gathering.trial().isOf(light.id()) ? gathering.trial().place() : Optional.empty();
    if (tried.isPresent()) {
      return List.of(moved(tried.get()));
    }
    List<Place> all = new ArrayList<>();
    all.add(new Place(light, figures.distance(), false));
    Limits limits = gathering.wishes().limits();
    if (limits.lightsMayMove()) {
      List<Point> others = new ArrayList<>(Moves.of(light, limits.nearest()));
      for (double height : gathering.supplies().standHeights()) {
        Point lowered = Moves.lowered(light, height);
        boolean far = lowered.distanceTo(light.target().at()).value() >= limits.nearest().value();
        if (height < light.place().z() && far) {
          others.add(lowered);
        }
      }
      others.forEach(place -> all.add(moved(place)));
    }
    return all;
  }

  private Place moved(Point place) {
    return new Place(light.withPlace(place), place.distanceTo(light.target().at()), true);
  }

  private Found find() {
    if (figures.level().isEmpty()) {
      return new Found(
          List.of(),
          true,
          List.of(Said.of("adapting.cannot.levelUnknown", Filling.text(light.id()))));
    }
    if (pin.filter(p -> !p.lit()).isPresent()) {
      return new Found(List.of(), true, List.of());
    }
    List<Modifier> modifiers = new ArrayList<>();
    gathering.kit().modifiers().forEach(several -> modifiers.add(several.item()));
    modifiers.add(Modifier.standardReflector());
    for (int m = 0; m < modifiers.size(); m++) {
      Modifier modifier = modifiers.get(m);
      if (pin.flatMap(Pin::modifier).filter(name -> !name.equals(modifier.name())).isEmpty()) {
        for (Place place : places) {
          withModifier(m < modifiers.size() - 1 ? m : -1, modifier, place);
        }
      }
    }
    if (makings.size() <= MOST_MAKINGS) {
      return new Found(makings, true, makings.isEmpty() ? List.copyOf(refusals) : List.of());
    }
    List<Making> likelier = new ArrayList<>(makings);
    likelier.sort(Comparator.comparingDouble(making -> making.costs().sum()));
    return new Found(List.copyOf(likelier.subList(0, MOST_MAKINGS)), false, List.of());
  }

  /** One head with one modifier at one place, as one flash without a gel. */
  private record Mounted(
      int model,
      KitTonight.HeadModel head,
      int modifierIndex,
      Modifier modifier,
      Place place,
      double atFullStops,
      double unlikeness,
      BitSet seenBy) {}

  private void withModifier(int index, Modifier modifier, Place place) {
    if (!isSoftEnough(modifier, place) || !isCarried(place)) {
      return;
    }
    BitSet seenBy =
        place.moved()
            ? gathering.seenBy(
                light.place(), place.light().place(), modifier.face().largestDimension())
            : new BitSet();
    double unlikeness = unlikeness(modifier, place);
    Optional<LightAtTarget> seen = Optional.empty();
    double geometry = 0;
    List<KitTonight.HeadModel> models = gathering.kit().heads();
    for (int h = 0; h < models.size(); h++) {
      Head head = models.get(h).head();
      if (!isWanted(head, modifier)) {
        continue;
      }
      Optional<Output.ByReading> together = gathering.readings().of(head, modifier);
      if (seen.isEmpty()) {
        seen =
            Optional.of(
                LightComputation.atTarget(
                        gathering.setup(), place.light(), head, modifier, together)
                    .withGel(lampwright.engine.light.Gel.NONE));
        geometry = seen.get().geometry();
      }
      if (geometry == 0) {
        refusals.add(Said.of("adapting.cannot.doesNotReach", Filling.text(light.id())));
        return;
      }
      double peak = LightComputation.output(head, together).peak(seen.get().modifier()).value();
      double atFullStops = Stops.ofRatio(peak * geometry).value() - dimmedStops();
      withHead(
          new Mounted(h, models.get(h), index, modifier, place, atFullStops, unlikeness, seenBy));
    }
  }

  private double dimmedStops() {
    return gathering.trial().isOf(light.id()) ? gathering.trial().dimmed().value() : 0;
  }

  private double unlikeness(Modifier modifier, Place place) {
    double aside = place.moved() ? Moves.degreesAside(light, place.light().place()) : 0;
    return Likeness.unlikeness(
            light.modifierOrStandard(),
            figures.distance(),
            modifier,
            place.distance(),
            gathering.weights())
        + Likeness.PER_DEGREE * aside;
  }

  private boolean isSoftEnough(Modifier modifier, Place place) {
    double softer =
        Likeness.softer(light.modifierOrStandard(), figures.distance(), modifier, place.distance());
    Optional<Double> within = gathering.wishes().limits().softnessWithin();
    if (within.filter(most -> Math.abs(softer) > most + 1e-9).isPresent()) {
      refusals.add(Said.of("adapting.cannot.softEnough", Filling.text(light.id())));
      return false;
    }
    return true;
  }

  private boolean isCarried(Place place) {
    double height = place.light().place().z();
    if (!gathering.supplies().standReaches(height)) {
      refusals.add(
          Said.of("adapting.cannot.asHigh", Filling.text(light.id()), Filling.length(height, 1)));
      return false;
    }
    return true;
  }

  private boolean isWanted(Head head, Modifier modifier) {
    if (pin.flatMap(Pin::head).filter(name -> !name.equals(head.name())).isPresent()) {
      return false;
    }
    if (!modifier.fits(head)) {
      refusals.add(Said.of("adapting.cannot.noneFits", Filling.text(light.id())));
      return false;
    }
    return true;
  }

  private void withHead(Mounted mounted) {
    Head head = mounted.head().head();
    int most = Math.min(mostHeads, mounted.head().count());
    for (int pops = light.pops(); pops <= Math.max(light.pops(), mostPops); pops++) {
      Optional<Dial> dial = dial(mounted.head(), pops);
      if (dial.isEmpty()) {
        refusals.add(
            Said.of(
                "adapting.cannot.recycle", Filling.text(head.name()), Filling.text(light.id())));
        continue;
      }
      for (int n = fewestHeads; n <= most; n++) {
        for (GelChoice.Option gel : gels) {
          add(mounted, n, pops, gel, dial.get());
        }
      }
    }
  }

  private void add(Mounted mounted, int n, int pops, GelChoice.Option gel, Dial dial) {
    Head head = mounted.head().head();
    Modifier modifier = mounted.modifier();
    Place place = mounted.place();
    int copies = 0;
    Supplies.Taking taking =
        gathering.supplies().new Taking().head(mounted.model(), n).stand(place.light().place().z());
    if (mounted.modifierIndex() >= 0) {
      copies = modifier.piecesFor(n);
      taking.modifier(mounted.modifierIndex(), copies);
    }
    for (int index : gel.indices()) {
      taking.gel(index, n);
    }
    Making making =
        new Making(
            mounted.model(),
            head,
            modifier,
            gel.gels(),
            n,
            pops,
            place.light().place(),
            place.distance(),
            place.moved(),
            mounted.atFullStops() + Stops.ofRatio((double) n * pops).value() - gel.lossStops(),
            dial,
            costs(mounted, n, pops, copies, gel),
            taking.uses(),
            Optional.empty(),
            mounted.seenBy());
    if (head.pack().isEmpty()) {
      makings.add(making);
    } else {
      addOnPacks(making, head.pack().get(), taking);
    }
  }

  private void addOnPacks(Making making, String name, Supplies.Taking taking) {
    List<KitTonight.PackTonight> packs = gathering.kit().packs();
    for (int p = 0; p < packs.size(); p++) {
      if (packs.get(p).pack().name().equals(name)) {
        Supplies.Taking withPack = taking.copy().pack(p, making.heads());
        makings.add(making.on(onPack(p, packs.get(p), making, withPack), withPack.uses()));
      }
    }
  }

  /** A pack's own wait is shared by the lights on it, each by the energy that it takes. */
  private Making.OnPack onPack(
      int index, KitTonight.PackTonight tonight, Making making, Supplies.Taking taking) {
    List<Uses> uses = new ArrayList<>();
    List<Double> costs = new ArrayList<>();
    double recycle = tonight.pack().recycle().map(Seconds::value).orElse(0.0);
    double full = making.head().energy().value() * making.heads() * making.pops();
    for (int i = 0; i < making.dial().count(); i++) {
      double energy = full * new Stops(making.dial().down(i)).negated().toFactor();
      uses.add(taking.withEnergy(index, energy));
      costs.add(
          gathering.weights().pacePerSecond() * recycle * energy / tonight.pack().energy().value());
    }
    return new Making.OnPack(index, uses, costs);
  }

  /** What battery and pace leave of the head's powers. */
  private Optional<Dial> dial(KitTonight.HeadModel model, int pops) {
    Head head = model.head();
    boolean own = head.pack().isEmpty();
    double recycle = own ? head.recycle().map(Seconds::value).orElse(0.0) * pops : 0;
    double down = 0;
    Supplies.Pace pace = gathering.pace();
    if (own && pace.betweenFrames().isPresent() && recycle > 0) {
      down = Math.max(down, Stops.ofRatio(recycle / pace.betweenFrames().get().value()).value());
    }
    boolean battery = own && head.feed() == Head.Feed.BATTERY;
    if (battery && pace.frames().isPresent() && head.flashesPerCharge().isPresent()) {
      double flashes = head.flashesPerCharge().get() * model.charges();
      if (flashes == 0) {
        return Optional.empty();
      }
      down = Math.max(down, Stops.ofRatio((double) pace.frames().get() * pops / flashes).value());
    }
    return Dial.of(range(head), down, recycle);
  }

  private Making.Costs costs(Mounted mounted, int n, int pops, int copies, GelChoice.Option gel) {
    Weights weights = gathering.weights();
    Head head = mounted.head().head();
    Modifier modifier = mounted.modifier();
    boolean moved = mounted.place().moved();
    double kg = n * head.weightKg().orElse(0.0) + copies * modifier.weightKg().orElse(0.0);
    int more = Math.max(0, n - light.heads()) + (pops - light.pops()) + (moved ? 1 : 0);
    int touched =
        (head.equals(light.head()) && n == light.heads() ? 0 : 1)
            + (modifier.equals(light.modifierOrStandard()) ? 0 : 1)
            + (gel.gels().equals(light.gels()) ? 0 : 1)
            + (moved ? 1 : 0)
            + (pops == light.pops() ? 0 : 1);
    return new Making.Costs(
        role * mounted.unlikeness(),
        gel.cost(),
        weights.carryPerKg() * kg,
        weights.handling() * more + weights.touch() * touched);
  }
}
