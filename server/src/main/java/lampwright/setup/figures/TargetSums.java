package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;

/**
 * Adds up the lights that are for the same target, and all that reach it. At a subject the sum is
 * what a flat meter gets that is held toward the camera: each light counts as its face stands over
 * the receptor's horizon, a light from behind not at all. On a surface it is what falls on it.
 */
final class TargetSums {

  /** Targets nearer to each other than this are one, in metres. */
  private static final double SAME_PLACE_M = 0.05;

  private final SetupDocument setup;
  private final List<ShiningLight> lights;
  private final Optional<ShiningLight> key;
  private final ExposureSettings settings;
  private final Optional<AmbientFigures> ambient;

  private TargetSums(
      SetupDocument setup, List<ShiningLight> lights, Optional<AmbientFigures> ambient) {
    this.setup = setup;
    this.lights = lights;
    this.key =
        lights.stream()
            .filter(light -> light.figures().light().role() == Role.KEY && light.isKnown())
            .findFirst();
    this.settings = setup.exposure().settings();
    this.ambient = ambient;
  }

  /**
   * All targets, each in the order of its first light.
   *
   * @param unlit without those of which no light's strength is known
   */
  record Targets(List<TargetFigures> lit, List<UnlitTarget> unlit) {}

  static Targets of(
      SetupDocument setup, List<ShiningLight> lights, Optional<AmbientFigures> ambient) {
    TargetSums sums = new TargetSums(setup, lights, ambient);
    Targets all = new Targets(new ArrayList<>(), new ArrayList<>());
    boolean[] done = new boolean[lights.size()];
    for (int i = 0; i < lights.size(); i++) {
      if (done[i]) {
        continue;
      }
      Target target = lights.get(i).figures().light().target();
      boolean[] own = new boolean[lights.size()];
      for (int j = i; j < lights.size(); j++) {
        own[j] = !done[j] && isSame(target, lights.get(j).figures().light().target());
        done[j] |= own[j];
      }
      sums.sum(target, own, all);
    }
    return all;
  }

  private static boolean isSame(Target one, Target other) {
    boolean bothOnSurface =
        (one.held() == Target.Held.ON_SURFACE) == (other.held() == Target.Held.ON_SURFACE);
    return bothOnSurface && one.at().distanceTo(other.at()).value() < SAME_PLACE_M;
  }

  private void sum(Target target, boolean[] own, Targets all) {
    Point at = target.at();
    boolean onSurface = target.held() == Target.Held.ON_SURFACE;
    UnitVector normal =
        onSurface
            ? LightComputation.surfaceNormal(target)
            : LightComputation.towardCamera(setup, at);
    Optional<UnitVector> towardKey =
        onSurface
            ? Optional.empty()
            : key.map(light -> light.figures().light().place())
                .filter(place -> place.distanceTo(at).value() > SAME_PLACE_M)
                .map(place -> UnitVector.between(at, place));
    Adding ofOwn = new Adding();
    Adding ofAll = new Adding();
    List<TargetFigures.Share> shares = new ArrayList<>();
    List<SpillFigures.Reach> reaches = new ArrayList<>(lights.size());
    double keyLight = 0;
    double fill = 0;
    double variance = 0;
    for (int i = 0; i < own.length; i++) {
      ShiningLight light = lights.get(i);
      LightFigures figures = light.figures();
      boolean isOwn = own[i];
      if (!light.isKnown() && !isOwn) {
        continue;
      }
      double exposure = light.flat(at, normal);
      double byKey = towardKey.isPresent() ? light.flat(at, towardKey.get()) : 0;
      double byDome = onSurface ? 0 : light.dome(at, normal);
      ofAll.add(exposure, byKey, byDome);
      LuxSeconds here = exposure == 0 ? LuxSeconds.NONE : new LuxSeconds(exposure);
      Known known = figures.level().map(Level::known).orElse(Known.COMPUTED);
      if (light.isKnown()) {
        reaches.add(
            new SpillFigures.Reach(
                figures.light().id(), isOwn, here, isOwn ? known : Known.COMPUTED));
      }
      if (isOwn) {
        ofOwn.add(exposure, byKey, byDome);
        shares.add(new TargetFigures.Share(figures.light().id(), here, known));
        keyLight += figures.light().role() == Role.KEY ? exposure : 0;
        fill += figures.light().role() == Role.FILL ? exposure : 0;
        double deviation = figures.level().map(l -> l.uncertainty().value()).orElse(0.0) * exposure;
        variance += deviation * deviation;
      }
    }
    LuxSeconds ambientExposure = ambient.map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    SpillFigures.Sums sums = ofOwn.sums(ambientExposure, towardKey.isPresent(), !onSurface);
    LightSum sum = sums.towardCamera();
    SpillFigures spill =
        new SpillFigures(reaches, ofAll.sums(ambientExposure, towardKey.isPresent(), !onSurface));
    double total = sum.total().value();
    if (total == 0) {
      if (!reaches.isEmpty()) {
        List<LightId> ids = shares.stream().map(TargetFigures.Share::light).toList();
        all.unlit().add(new UnlitTarget(target, ids, spill));
      }
      return;
    }
    double ofAmbient =
        ambient.map(a -> a.uncertainty().value() * ambientExposure.value()).orElse(0.0);
    variance += ofAmbient * ofAmbient;
    all.lit()
        .add(
            new TargetFigures(
                target,
                shares,
                sum,
                sum.reading(settings, MeterConstant.FLAT),
                sum.offset(settings, MeterConstant.FLAT),
                keyLight > 0 && fill > 0
                    ? Optional.of(LightingRatio.of(new LuxSeconds(keyLight), new LuxSeconds(fill)))
                    : Optional.empty(),
                sum.flash().value() > 0 && ambientExposure.value() > 0
                    ? Optional.of(sum.flashOverAmbient())
                    : Optional.empty(),
                sums,
                spill,
                new Stops(Math.sqrt(variance) / total)));
  }

  /** Light as the three ways of holding a meter add it, in lux seconds. */
  private final class Adding {

    private double towardCamera;
    private double towardKey;
    private double byDome;

    void add(double toCamera, double toKey, double dome) {
      towardCamera += toCamera;
      towardKey += toKey;
      byDome += dome;
    }

    /** The ambient reads alike by either receptor, so it weighs as each one's constant does. */
    SpillFigures.Sums sums(LuxSeconds ambientExposure, boolean withKey, boolean withDome) {
      return new SpillFigures.Sums(
          new LightSum(new LuxSeconds(towardCamera), ambientExposure),
          withKey
              ? Optional.of(new LightSum(new LuxSeconds(towardKey), ambientExposure))
              : Optional.empty(),
          withDome
              ? Optional.of(
                  new LightSum(
                      new LuxSeconds(byDome),
                      ambientExposure.times(
                          MeterConstant.DOME.luxSeconds() / MeterConstant.FLAT.luxSeconds())))
              : Optional.empty(),
          settings);
    }
  }
}
