package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;

/**
 * Adds up the lights that are for the same target. At a subject the sum is what a flat meter gets
 * that is held toward the camera: each light counts with the cosine of its direction, a light from
 * behind not at all. On a surface it is what falls on the surface.
 */
final class TargetSums {

  /** Targets nearer to each other than this are one, in metres. */
  private static final double SAME_PLACE_M = 0.05;

  private final SetupDocument setup;
  private final ExposureSettings settings;
  private final Optional<AmbientFigures> ambient;

  private TargetSums(SetupDocument setup, Optional<AmbientFigures> ambient) {
    this.setup = setup;
    this.settings = setup.exposure().settings();
    this.ambient = ambient;
  }

  static List<TargetFigures> of(
      SetupDocument setup, List<LightFigures> lights, Optional<AmbientFigures> ambient) {
    TargetSums sums = new TargetSums(setup, ambient);
    List<TargetFigures> all = new ArrayList<>();
    List<LightFigures> left = new ArrayList<>(lights);
    while (!left.isEmpty()) {
      Target target = left.getFirst().light().target();
      List<LightFigures> here = new ArrayList<>();
      List<LightFigures> others = new ArrayList<>();
      for (LightFigures figures : left) {
        (isSame(target, figures.light().target()) ? here : others).add(figures);
      }
      left = others;
      sums.sum(target, here).ifPresent(all::add);
    }
    return all;
  }

  private static boolean isSame(Target one, Target other) {
    boolean bothOnSurface =
        (one.held() == Target.Held.ON_SURFACE) == (other.held() == Target.Held.ON_SURFACE);
    return bothOnSurface && one.at().distanceTo(other.at()).value() < SAME_PLACE_M;
  }

  private Optional<TargetFigures> sum(Target target, List<LightFigures> lights) {
    List<TargetFigures.Share> shares = new ArrayList<>(lights.size());
    double flash = 0;
    double key = 0;
    double fill = 0;
    double variance = 0;
    for (LightFigures figures : lights) {
      double exposure = share(figures);
      Known known = figures.level().map(Level::known).orElse(Known.COMPUTED);
      shares.add(new TargetFigures.Share(figures.light().id(), new LuxSeconds(exposure), known));
      flash += exposure;
      key += figures.light().role() == Role.KEY ? exposure : 0;
      fill += figures.light().role() == Role.FILL ? exposure : 0;
      double deviation = figures.level().map(l -> l.uncertainty().value()).orElse(0.0) * exposure;
      variance += deviation * deviation;
    }
    LuxSeconds ambientExposure = ambient.map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    LightSum sum = new LightSum(new LuxSeconds(flash), ambientExposure);
    double total = sum.total().value();
    if (total == 0) {
      return Optional.empty();
    }
    double ofAmbient =
        ambient.map(a -> a.uncertainty().value() * ambientExposure.value()).orElse(0.0);
    variance += ofAmbient * ofAmbient;
    return Optional.of(
        new TargetFigures(
            target,
            shares,
            sum,
            sum.reading(settings, MeterConstant.FLAT),
            sum.offset(settings, MeterConstant.FLAT),
            key > 0 && fill > 0
                ? Optional.of(LightingRatio.of(new LuxSeconds(key), new LuxSeconds(fill)))
                : Optional.empty(),
            flash > 0 && ambientExposure.value() > 0
                ? Optional.of(sum.flashOverAmbient())
                : Optional.empty(),
            new Stops(Math.sqrt(variance) / total)));
  }

  /** What a light adds to the sum: its part in the picture, turned from how it was metered. */
  private double share(LightFigures figures) {
    Optional<LuxSeconds> inPicture = figures.inPicture();
    if (inPicture.isEmpty()) {
      return 0;
    }
    Target target = figures.light().target();
    if (target.held() != Target.Held.TOWARD_LIGHT) {
      return inPicture.get().value();
    }
    UnitVector toLight = UnitVector.between(target.at(), figures.light().place());
    return inPicture.get().value()
        * toLight.receivedBy(LightComputation.towardCamera(setup, target.at()));
  }
}
