package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;

/** Computes the figures of a setup. */
public final class FiguresComputation {

  private static final List<String> LEFT_OUT =
      List.of(
          "Fall-off away from a light's axis, and spill of a light onto the other targets.",
          "Light that walls, ground and clothes give back.",
          "What the shutter cuts off a slow flash.");

  private FiguresComputation() {}

  /** The figures of a setup; deterministic. */
  public static Figures of(SetupDocument setup) {
    ExposureSettings settings = setup.exposure().settings();
    LightComputation computation = new LightComputation(setup);
    List<LightFigures> lights = new ArrayList<>();
    Set<String> needs = new LinkedHashSet<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      LightFigures figures = computation.figures(setup.lights().get(i), "/lights/" + i);
      lights.add(figures);
      needs.addAll(figures.needs());
    }
    Optional<AmbientFigures> ambient = setup.ambient().map(a -> ambient(a, settings));
    if (ambient.isEmpty()) {
      needs.add("/ambient");
    }
    return new Figures(
        settings.ev100(),
        settings.requiredExposure(MeterConstant.FLAT),
        againstKey(lights),
        ambient,
        TargetSums.of(setup, lights, ambient),
        energyPerFrame(lights),
        List.copyOf(needs),
        LEFT_OUT);
  }

  private static AmbientFigures ambient(
      lampwright.setup.Ambient ambient, ExposureSettings settings) {
    Ambient light = Ambient.of(ambient.level());
    return new AmbientFigures(
        ambient,
        light.exposure(settings.time(), MeterConstant.FLAT),
        light.offset(settings),
        Uncertainty.of(ambient.known()),
        light.offsetWorking(settings));
  }

  private static List<LightFigures> againstKey(List<LightFigures> lights) {
    Optional<Stops> key =
        lights.stream()
            .filter(figures -> figures.light().role() == Role.KEY)
            .flatMap(figures -> figures.level().stream())
            .map(Level::fromShooting)
            .findFirst();
    return lights.stream()
        .map(
            figures ->
                figures.withFromKey(
                    figures.level().flatMap(level -> key.map(k -> level.fromShooting().minus(k)))))
        .toList();
  }

  private static Optional<WattSeconds> energyPerFrame(List<LightFigures> lights) {
    double sum = 0;
    for (LightFigures figures : lights) {
      if (figures.energy().isEmpty()) {
        return Optional.empty();
      }
      sum += figures.energy().get().value();
    }
    return Optional.of(new WattSeconds(sum));
  }
}
