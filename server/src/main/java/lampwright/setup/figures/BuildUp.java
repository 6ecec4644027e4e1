package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * How the light grows while a setup is built: what a flat meter toward the camera (on a surface:
 * along it) gets at each light's target when that light and all before it in the build order fire
 * together over the ambient, the light of heads that are for another target included.
 *
 * @param sums by light, in build order; without lights whose target is dark so far
 */
public record BuildUp(Map<LightId, SpillFigures.Sums> sums) {

  public BuildUp {
    sums = new LinkedHashMap<>(sums);
  }

  /** Adds up a setup light by light. */
  public static BuildUp of(SetupDocument setup) {
    Map<LightId, SpillFigures.Sums> sums = new LinkedHashMap<>();
    List<Light> built = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      built.add(light);
      sums(FiguresComputation.of(with(setup, built)), light.id())
          .ifPresent(sum -> sums.put(light.id(), sum));
    }
    return new BuildUp(sums);
  }

  /** The same as an f-number at the shooting ISO; absent where it is dark. */
  public Optional<FNumber> reading(LightId light) {
    return Optional.ofNullable(sums.get(light))
        .filter(sum -> sum.towardCamera().total().value() > 0)
        .map(sum -> sum.towardCamera().reading(sum.settings(), MeterConstant.FLAT));
  }

  private static Optional<SpillFigures.Sums> sums(Figures figures, LightId light) {
    return Stream.concat(
            figures.targets().stream()
                .filter(target -> target.lights().contains(light))
                .map(TargetFigures::spill),
            figures.unlit().stream()
                .filter(target -> target.lights().contains(light))
                .map(UnlitTarget::spill))
        .findFirst()
        .map(SpillFigures::sums);
  }

  /** What of it is built; the rest of the document speaks of lights that are not there yet. */
  private static SetupDocument with(SetupDocument setup, List<Light> lights) {
    return new SetupDocument(
        setup.title(),
        setup.intent(),
        setup.moods(),
        setup.genre(),
        setup.occasion(),
        setup.exposure(),
        setup.camera(),
        setup.subjects(),
        setup.surfaces(),
        lights,
        setup.ambient(),
        setup.plan(),
        List.of(),
        setup.cautions(),
        List.of(),
        setup.retouchNotes());
  }
}
