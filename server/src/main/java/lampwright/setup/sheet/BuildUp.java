package lampwright.setup.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.SpillFigures;

/**
 * What the meter gives while a setup is built: after each light, at that light's target, everything
 * that burns by then and the ambient together. Stops add as light, not as stops.
 */
public final class BuildUp {

  private BuildUp() {}

  /**
   * The state after one light was set.
   *
   * @param light that came last
   * @param together of all lights so far and the ambient, on a flat meter toward the camera, or on
   *     the surface that the target is; absent where one of them is not known, or all is dark
   */
  public record Step(Light light, Optional<Together> together) {}

  /**
   * A reading.
   *
   * @param reading at the shooting ISO
   * @param fromShooting in stops from the shooting exposure
   */
  public record Together(FNumber reading, Stops fromShooting) {}

  /** The steps in build order. */
  public static List<Step> of(SetupDocument setup, Figures figures) {
    List<Step> steps = new ArrayList<>();
    Set<LightId> burning = new HashSet<>();
    for (Light light : setup.lightsInBuildOrder()) {
      burning.add(light.id());
      Set<LightId> soFar = Set.copyOf(burning);
      steps.add(
          new Step(
              light,
              spill(figures, light.id())
                  .flatMap(all -> together(all, soFar, figures, setup.exposure().settings()))));
    }
    return List.copyOf(steps);
  }

  private static Optional<SpillFigures> spill(Figures figures, LightId light) {
    return Stream.concat(
            figures.targets().stream()
                .filter(target -> target.lights().contains(light))
                .map(target -> target.spill()),
            figures.unlit().stream()
                .filter(target -> target.lights().contains(light))
                .map(target -> target.spill()))
        .findFirst();
  }

  private static Optional<Together> together(
      SpillFigures all, Set<LightId> burning, Figures figures, ExposureSettings settings) {
    double flash = 0;
    int known = 0;
    for (SpillFigures.Reach reach : all.reaches()) {
      if (burning.contains(reach.light())) {
        flash += reach.exposure().value();
        known++;
      }
    }
    LuxSeconds ambient = figures.ambient().map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    LightSum sum = new LightSum(new LuxSeconds(flash), ambient);
    return known < burning.size() || sum.total().value() == 0
        ? Optional.empty()
        : Optional.of(
            new Together(
                sum.reading(settings, MeterConstant.FLAT),
                sum.offset(settings, MeterConstant.FLAT)));
  }
}
