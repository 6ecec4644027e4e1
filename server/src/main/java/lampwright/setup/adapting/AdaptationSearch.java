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
import lampwright.gear.Several;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;

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
      SetupDocument setup,
      Kit kit,
      Optional<Ev100> newAmbient,
      Limits limits,
      Weights.Preset preset) {
    this.setup = setup;
    this.kit = kit;
    this.limits = limits;
    this.weights = preset.weights();
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
   */
  public static Answer adapt(
      SetupDocument setup,
      Kit kit,
      Optional<Ev100> newAmbient,
      Limits limits,
      Weights.Preset preset) {
    return new AdaptationSearch(setup, kit, newAmbient, limits, preset).solve();
  }

  /** A setting with its heads and what it costs. */
  record Candidate(CameraChoice.Setting setting, HeadChoice.Chosen heads, double cost) {}

  private Answer solve() {
    List<String> contradictions = camera.contradictions(limits);
    if (!contradictions.isEmpty()) {
      return new Answer.NotEnoughGear(contradictions, List.of(), List.of(), List.of());
    }
    List<Candidate> chosen = best();
    AdaptedDocument documents =
        new AdaptedDocument(setup, kit, original, camera, modifiers, readings, ambient);
    List<LightId> unlit = unlit(chosen.getFirst());
    if (unlit.size() == setup.lights().size()) {
      return new Answer.NotEnoughGear(reasons(unlit), unlit, remedies(unlit), List.of());
    }
    List<Adaptation> adaptations =
        chosen.stream().filter(this::lightsAny).map(documents::of).toList();
    return unlit.isEmpty()
        ? new Answer.Adapted(adaptations)
        : new Answer.NotEnoughGear(reasons(unlit), unlit, remedies(unlit), adaptations);
  }

  private boolean lightsAny(Candidate candidate) {
    return unlit(candidate).size() < setup.lights().size();
  }

  /**
   * The best first, then the best that differ from all before in a way that one would notice. Heads
   * are given out only for settings that may come next: a setting's own cost is a bound below what
   * it costs with heads, so the order is exact and most settings are never looked into.
   */
  private List<Candidate> best() {
    PriorityQueue<Bound> queue =
        new PriorityQueue<>(Comparator.comparingDouble(Bound::cost).thenComparingInt(Bound::index));
    int index = 0;
    for (CameraChoice.Setting setting : camera.settings(limits)) {
      queue.add(new Bound(setting, costOf(setting.exposure()), index++, Optional.empty()));
    }
    List<Candidate> chosen = new ArrayList<>();
    while (chosen.size() < MOST_ADAPTATIONS && !queue.isEmpty()) {
      Bound next = queue.remove();
      if (next.lit().isEmpty()) {
        queue.add(next.lit(heads));
      } else {
        Candidate candidate = new Candidate(next.setting(), next.lit().get(), next.cost());
        if (chosen.stream().allMatch(other -> differ(candidate, other))) {
          chosen.add(candidate);
        }
      }
    }
    return chosen;
  }

  /** A setting with what it costs at the least, or in all once heads are given out. */
  private record Bound(
      CameraChoice.Setting setting, double cost, int index, Optional<HeadChoice.Chosen> lit) {

    Bound lit(HeadChoice heads) {
      HeadChoice.Chosen chosen = heads.at(setting.exposure().requiredExposure(MeterConstant.FLAT));
      return new Bound(setting, cost + chosen.cost(), index, Optional.of(chosen));
    }
  }

  private double costOf(ExposureSettings settings) {
    ExposureSettings old = setup.exposure().settings();
    Iso lowest = camera.body().map(lampwright.gear.Body::lowestIso).orElse(Iso.HUNDRED);
    double time = weights.time() * (isMoving() ? TIME_MATTERS_MORE_WITH_MOVEMENT : 1);
    return weights.ambient() * Math.abs(ambientMiss(settings))
        + weights.depth() * Math.abs(depthChange(settings.aperture(), camera).value())
        + time * Math.abs(settings.time().stopsOver(old.time()).value())
        + weights.iso() * Math.max(0, settings.iso().stopsOver(lowest).value());
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

  private List<LightId> unlit(Candidate candidate) {
    List<LightId> unlit = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      if (candidate.heads().heads().get(i).isEmpty()) {
        unlit.add(setup.lights().get(i).id());
      }
    }
    return unlit;
  }

  private List<String> reasons(List<LightId> unlit) {
    List<String> reasons = new ArrayList<>();
    int count = kit.heads().stream().mapToInt(Several::count).sum();
    int lights = setup.lights().size();
    for (LightId id : unlit) {
      if (original.get(id).level().isEmpty()) {
        reasons.add("The level of “" + id + "” is not known, so it cannot be made again.");
      } else if (count >= lights) {
        reasons.add("No head of the kit comes near what “" + id + "” needs.");
      } else {
        reasons.add("No head is left for “" + id + "”.");
      }
    }
    if (count < lights) {
      reasons.add(
          "The kit has "
              + (count == 1 ? "1 head" : count + " heads")
              + " for "
              + (lights == 1 ? "1 light." : lights + " lights."));
    }
    return reasons;
  }

  private List<String> remedies(List<LightId> unlit) {
    List<String> remedies = new ArrayList<>();
    for (LightId id : unlit) {
      LightFigures light = original.get(id);
      remedies.add(
          light.level().isEmpty()
              ? "Meter “" + id + "” or say its power in the setup."
              : "One more head of about "
                  + light.light().head().energy()
                  + " for “"
                  + id
                  + "”, or give it up.");
    }
    return remedies;
  }
}
