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
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;

/** Computes the figures of a setup. */
public final class FiguresComputation {

  private static final List<String> LEFT_OUT =
      List.of(
          "Fall-off away from a light's axis, and spill of a light onto the other targets.",
          "Light that walls, ground and clothes give back.",
          "A leaf shutter's own efficiency at wide apertures, some tenths of a stop.");

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
    List<TargetFigures> targets = TargetSums.of(setup, lights, ambient);
    Optional<OpticsFigures> optics = OpticsComputation.of(setup, needs);
    List<MovementFigures> movements = MovementComputation.of(setup, optics, lights, targets, needs);
    PowerFigures power = PowerComputation.of(setup, needs);
    ColourFigures.addNeeds(setup, needs);
    return new Figures(
        settings.ev100(),
        settings.requiredExposure(MeterConstant.FLAT),
        againstKey(lights),
        ambient,
        targets,
        FlashAgainstAmbient.of(ambient, targets),
        DialComputation.of(setup, lights, targets),
        optics,
        movements,
        power,
        ColourFigures.of(setup),
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
        settings);
  }

  private static List<LightFigures> againstKey(List<LightFigures> lights) {
    Optional<Stops> key = Optional.empty();
    for (LightFigures figures : lights) {
      if (key.isEmpty() && figures.light().role() == Role.KEY) {
        key = figures.level().map(Level::fromShooting);
      }
    }
    List<LightFigures> all = new ArrayList<>(lights.size());
    for (LightFigures figures : lights) {
      Optional<Stops> ofKey = key;
      all.add(
          figures.withFromKey(
              figures.level().flatMap(level -> ofKey.map(k -> level.fromShooting().minus(k)))));
    }
    return all;
  }
}
