package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * Finds how a kit can make a setup.
 *
 * <p>Every camera setting that body, lens and limits allow is tried, on the camera's own scale of
 * third stops; for each, the heads are given to the lights at the least miss. What remains is the
 * setting of least cost: the light's misses by role, the ambient's offset, depth of field, shutter
 * time and ISO, weighted by {@link Weights}. Modifiers are chosen before, each light the one most
 * like its own; no light is moved and each gets one head. These two things keep it from the best
 * answer that could be had, and the answer says so.
 *
 * <p>With normal flash no setting but the shutter time changes flash against ambient (REFERENCE
 * section 0): a body that syncs slower needs that much more light from every head, by any route.
 */
public final class AdaptationSearch {

  /** So many ways are enough to choose from. */
  private static final int MOST_ADAPTATIONS = 3;

  /** An ambient within a third of a stop is held; less is not seen side by side. */
  private static final double HELD_STOPS = 1.0 / 3;

  /** Below what any cost could mean, above what adding doubles does. */
  private static final double ROUNDING = 1e-9;

  private static final double OTHER_APERTURE_STOPS = 0.6;
  private static final double OTHER_ISO_STOPS = 0.9;
  private static final double OTHER_AMBIENT_STOPS = 0.45;

  /** A moving subject makes the shutter time part of the look. */
  private static final double TIME_MATTERS_MORE_WITH_MOVEMENT = 3;

  private final SetupDocument setup;
  private final Kit kit;
  private final Limits limits;
  private final Weights weights;
  private final Figures original;
  private final Optional<Ev100> ambient;
  private final CameraChoice camera;
  private final List<Modifier> modifiers;
  private final PairedReadings readings;
  private final HeadChoice heads;

  private AdaptationSearch(
      SetupDocument setup, Kit kit, Optional<Ev100> newAmbient, Limits limits, Weights weights) {
    this.setup = setup;
    this.kit = kit;
    this.limits = limits;
    this.weights = weights;
    this.original = FiguresComputation.of(setup);
    this.ambient = newAmbient.or(() -> setup.ambient().map(lampwright.setup.Ambient::level));
    this.camera = CameraChoice.of(setup, kit);
    this.modifiers = ModifierChoice.of(original.lights(), kit, weights);
    this.readings = new PairedReadings(setup, kit);
    List<Head> units = GearUnits.of(kit.heads(), setup.lights().size());
    this.heads = new HeadChoice(setup, original.lights(), modifiers, units, readings, weights);
  }

  /**
   * Finds the best adaptations; deterministic.
   *
   * @param newAmbient the ambient to shoot in, where it is not the setup's
   * @param weights what the cost is made of
   */
  public static Answer adapt(
      SetupDocument setup, Kit kit, Optional<Ev100> newAmbient, Limits limits, Weights weights) {
    return new AdaptationSearch(setup, kit, newAmbient, limits, weights).solve();
  }

  /** A setting with its heads and what it costs. */
  record Candidate(
      CameraChoice.Setting setting, HeadChoice.Chosen heads, SettingCost settingCost, double cost) {

    /** Whether the other is as good or better in every matter, so that nobody would choose this. */
    boolean isWorseInAll(Candidate other) {
      return settingCost.isNowhereBelow(other.settingCost)
          && heads.cost() >= other.heads.cost() - ROUNDING;
    }
  }

  private Answer solve() {
    List<String> contradictions = camera.contradictions(limits);
    if (!contradictions.isEmpty()) {
      return new Answer.NotEnoughGear(contradictions, List.of(), List.of(), List.of());
    }
    List<Candidate> chosen = best();
    AdaptedDocument documents =
        new AdaptedDocument(setup, kit, original, camera, modifiers, readings, ambient);
    Shortage shortage = new Shortage(setup, kit, original);
    List<LightId> unlit = shortage.unlit(chosen.getFirst().heads());
    if (unlit.size() == setup.lights().size()) {
      return new Answer.NotEnoughGear(
          shortage.reasons(unlit), unlit, shortage.remedies(unlit), List.of());
    }
    List<Adaptation> adaptations =
        chosen.stream()
            .filter(one -> shortage.unlit(one.heads()).size() < setup.lights().size())
            .map(documents::of)
            .toList();
    return unlit.isEmpty()
        ? new Answer.Adapted(adaptations)
        : new Answer.NotEnoughGear(
            shortage.reasons(unlit), unlit, shortage.remedies(unlit), adaptations);
  }

  /**
   * The best first, then the best that differ from all before in a way that one would notice and
   * that are better in something; the last of them holds the ambient where no other does. Heads are
   * given out only for settings that may come next: a setting's own cost is a bound below what it
   * costs with heads, so the order is exact and most settings are never looked into.
   */
  private List<Candidate> best() {
    PriorityQueue<Bound> queue =
        new PriorityQueue<>(Comparator.comparingDouble(Bound::cost).thenComparingInt(Bound::index));
    int index = 0;
    for (CameraChoice.Setting setting : camera.settings(limits)) {
      SettingCost cost = costOf(setting.exposure());
      queue.add(new Bound(setting, cost, cost.sum(), index++, Optional.empty()));
    }
    List<Candidate> chosen = new ArrayList<>();
    Optional<Candidate> another = Optional.empty();
    while (chosen.size() < MOST_ADAPTATIONS && !queue.isEmpty()) {
      Bound next = queue.remove();
      if (next.lit().isEmpty()) {
        queue.add(next.lit(heads));
        continue;
      }
      Candidate candidate =
          new Candidate(next.setting(), next.lit().get(), next.settingCost(), next.cost());
      if (!chosen.stream().allMatch(other -> isWorthShowing(candidate, other))) {
        continue;
      }
      boolean last = chosen.size() == MOST_ADAPTATIONS - 1;
      if (!last || holdsAmbient(candidate) || chosen.stream().anyMatch(this::holdsAmbient)) {
        chosen.add(candidate);
      } else if (another.isEmpty()) {
        another = Optional.of(candidate);
      }
    }
    if (chosen.size() < MOST_ADAPTATIONS) {
      another.ifPresent(chosen::add);
    }
    return chosen;
  }

  private static boolean isWorthShowing(Candidate candidate, Candidate other) {
    return differ(candidate, other) && !candidate.isWorseInAll(other);
  }

  private boolean holdsAmbient(Candidate candidate) {
    return Math.abs(ambientMiss(candidate.setting().exposure())) < HELD_STOPS;
  }

  /** A setting with what it costs at the least, or in all once heads are given out. */
  private record Bound(
      CameraChoice.Setting setting,
      SettingCost settingCost,
      double cost,
      int index,
      Optional<HeadChoice.Chosen> lit) {

    Bound lit(HeadChoice heads) {
      HeadChoice.Chosen chosen = heads.at(setting.exposure().requiredExposure(MeterConstant.FLAT));
      return new Bound(setting, settingCost, cost + chosen.cost(), index, Optional.of(chosen));
    }
  }

  /** What a camera setting costs by itself, matter by matter. */
  record SettingCost(double ambient, double depth, double time, double iso) {

    double sum() {
      return ambient + depth + time + iso;
    }

    boolean isNowhereBelow(SettingCost other) {
      return ambient >= other.ambient - ROUNDING
          && depth >= other.depth - ROUNDING
          && time >= other.time - ROUNDING
          && iso >= other.iso - ROUNDING;
    }
  }

  private SettingCost costOf(ExposureSettings settings) {
    ExposureSettings old = setup.exposure().settings();
    Iso lowest = camera.body().map(lampwright.gear.Body::lowestIso).orElse(Iso.HUNDRED);
    double time = weights.time() * (isMoving() ? TIME_MATTERS_MORE_WITH_MOVEMENT : 1);
    return new SettingCost(
        weights.ambient() * Weights.ambientCount(ambientMiss(settings)),
        weights.depth() * Math.abs(depthChange(settings.aperture(), camera).value()),
        time * Math.abs(settings.time().stopsOver(old.time()).value()),
        weights.iso() * Math.max(0, settings.iso().stopsOver(lowest).value()));
  }

  private boolean isMoving() {
    return setup.subjects().stream().flatMap(s -> s.speedMPerS().stream()).anyMatch(v -> v > 0);
  }

  /** How far the background's level moves; without an ambient reading, how far the EV moves. */
  private double ambientMiss(ExposureSettings settings) {
    Optional<Stops> wanted = original.ambient().map(AmbientFigures::offset);
    if (ambient.isEmpty() || wanted.isEmpty()) {
      return settings.ev100().minus(original.ev100()).value();
    }
    return Ambient.of(ambient.get()).offset(settings).minus(wanted.get()).value();
  }

  /** By how many stops of aperture a setting is deeper than the setup. */
  static Stops depthChange(FNumber aperture, CameraChoice camera) {
    return aperture.stopsAbove(camera.wantedAperture());
  }

  private static boolean differ(Candidate one, Candidate other) {
    ExposureSettings a = one.setting().exposure();
    ExposureSettings b = other.setting().exposure();
    return Math.abs(a.aperture().stopsAbove(b.aperture()).value()) > OTHER_APERTURE_STOPS
        || Math.abs(a.iso().stopsOver(b.iso()).value()) > OTHER_ISO_STOPS
        || Math.abs(a.ev100().minus(b.ev100()).value()) > OTHER_AMBIENT_STOPS;
  }
}
