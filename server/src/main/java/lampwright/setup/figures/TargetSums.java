package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
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

  private TargetSums() {}

  /** Lights for one target with their shares, while they are added up. */
  private record Share(LightFigures light, LuxSeconds exposure) {}

  static List<TargetFigures> of(
      SetupDocument setup, List<LightFigures> lights, Optional<AmbientFigures> ambient) {
    List<TargetFigures> sums = new ArrayList<>();
    List<LightFigures> left = new ArrayList<>(lights);
    while (!left.isEmpty()) {
      Target target = left.getFirst().light().target();
      List<LightFigures> here =
          left.stream().filter(figures -> isSame(target, figures.light().target())).toList();
      left.removeAll(here);
      sum(setup, target, here, ambient).ifPresent(sums::add);
    }
    return sums;
  }

  private static boolean isSame(Target one, Target other) {
    boolean bothOnSurface =
        (one.held() == Target.Held.ON_SURFACE) == (other.held() == Target.Held.ON_SURFACE);
    return bothOnSurface && one.at().distanceTo(other.at()).value() < SAME_PLACE_M;
  }

  private static Optional<TargetFigures> sum(
      SetupDocument setup,
      Target target,
      List<LightFigures> lights,
      Optional<AmbientFigures> ambient) {
    List<Share> shares =
        lights.stream().flatMap(figures -> share(setup, figures).stream()).toList();
    LuxSeconds ambientExposure = ambient.map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    LightSum sum = LightSum.of(shares.stream().map(Share::exposure).toList(), ambientExposure);
    if (sum.total().value() == 0) {
      return Optional.empty();
    }
    ExposureSettings settings = setup.exposure().settings();
    List<Working> parts = new ArrayList<>();
    for (Share share : shares) {
      parts.add(Working.given(share.light().light().id().text(), share.exposure().value(), "lx·s"));
    }
    ambient.ifPresent(a -> parts.add(Working.given("ambient", a.exposure().value(), "lx·s")));
    return Optional.of(
        new TargetFigures(
            target,
            lights.stream().map(figures -> figures.light().id()).toList(),
            sum,
            sum.reading(settings, MeterConstant.FLAT),
            sum.offset(settings, MeterConstant.FLAT),
            ratio(shares),
            LightSum.working("all the light at the " + target.name(), parts)));
  }

  /** What a light adds to the sum: its own level, turned from how it was metered. */
  private static Optional<Share> share(SetupDocument setup, LightFigures figures) {
    if (figures.level().isEmpty()) {
      return Optional.empty();
    }
    LuxSeconds exposure = figures.level().get().exposure();
    Target target = figures.light().target();
    if (target.held() == Target.Held.TOWARD_LIGHT) {
      UnitVector toLight = UnitVector.between(target.at(), figures.light().place());
      double cosine = toLight.receivedBy(LightComputation.towardCamera(setup, target.at()));
      exposure = exposure.times(cosine);
    }
    return Optional.of(new Share(figures, exposure));
  }

  private static Optional<LightingRatio> ratio(List<Share> shares) {
    LuxSeconds key = sumOf(shares, Role.KEY);
    LuxSeconds fill = sumOf(shares, Role.FILL);
    return key.value() > 0 && fill.value() > 0
        ? Optional.of(LightingRatio.of(key, fill))
        : Optional.empty();
  }

  private static LuxSeconds sumOf(List<Share> shares, Role role) {
    List<LuxSeconds> exposures =
        shares.stream()
            .filter(share -> share.light().light().role() == role)
            .map(Share::exposure)
            .toList();
    return exposures.isEmpty() ? LuxSeconds.NONE : LuxSeconds.sum(exposures);
  }
}
