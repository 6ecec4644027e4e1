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
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;

/** Computes the figures of a setup. */
public final class FiguresComputation {

  private static final List<Said> LEFT_OUT =
      List.of(Said.of("figuring.left.bounced"), Said.of("figuring.left.leafShutter"));

  private FiguresComputation() {}

  /** The figures of a setup; deterministic. */
  public static Figures of(SetupDocument setup) {
    ExposureSettings settings = setup.exposure().settings();
    LightComputation computation = new LightComputation(setup);
    List<LightFigures> lights = new ArrayList<>();
    List<ShiningLight> shining = new ArrayList<>();
    Set<String> needs = new LinkedHashSet<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      Light light = setup.lights().get(i);
      PlacedLight placed = computation.placed(light);
      LightFigures figures = computation.figures(light, placed, "/lights/" + i);
      shining.add(ShiningLight.of(figures, placed));
      lights.add(figures);
      needs.addAll(figures.needs());
    }
    Optional<AmbientFigures> ambient = setup.ambient().map(a -> ambient(a, settings));
    if (ambient.isEmpty()) {
      needs.add("/ambient");
    }
    TargetSums.Targets sums = TargetSums.of(setup, shining, ambient);
    List<TargetFigures> targets = sums.lit();
    Optional<OpticsFigures> optics = OpticsComputation.of(setup, needs);
    List<MovementFigures> movements = MovementComputation.of(setup, optics, lights, targets, needs);
    PowerFigures power = PowerComputation.of(setup, needs);
    List<WindFigures> winds = WindComputation.of(setup, needs);
    needs.addAll(sunNeeds(setup));
    ColourFigures.addNeeds(setup, needs);
    return new Figures(
        settings.ev100(),
        settings.requiredExposure(MeterConstant.FLAT),
        againstKey(lights),
        ambient,
        targets,
        sums.unlit(),
        FlashAgainstAmbient.of(ambient, targets),
        DialComputation.of(setup, lights, targets),
        optics,
        movements,
        PathComputation.of(setup, shining, ambient, optics),
        SunComputation.find(setup),
        winds,
        power,
        ColourFigures.of(setup),
        List.copyOf(needs),
        LEFT_OUT);
  }

  /** Only a setup under the sky that says something of when or where is asked for the rest. */
  private static List<String> sunNeeds(SetupDocument setup) {
    boolean told =
        setup
            .occasion()
            .filter(
                occasion ->
                    occasion.date().isPresent()
                        || occasion.time().isPresent()
                        || occasion.place().flatMap(Occasion.Place::latitude).isPresent())
            .isPresent();
    return told ? SunComputation.needs(setup) : List.of();
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
