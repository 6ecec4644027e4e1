package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;

/** Finds the levels of lights: what the meter said, and what the engine says. */
final class LevelComputation {

  private final SetupDocument setup;
  private final ExposureSettings settings;
  private final LuxSeconds ambient;

  LevelComputation(SetupDocument setup) {
    this.setup = setup;
    this.settings = setup.exposure().settings();
    this.ambient =
        setup
            .ambient()
            .map(a -> Ambient.of(a.level()).exposure(settings.time(), MeterConstant.FLAT))
            .orElse(LuxSeconds.NONE);
  }

  /** From the head's output, its modifier and the distance. */
  Optional<Level> computed(Light light, PlacedLight placed, Stops down, boolean longBurst) {
    LightAtTarget atTarget = placed.atTarget();
    LuxSeconds exposure = new LuxSeconds(placed.intensityCdS(down) * placed.geometry());
    if (exposure.value() == 0) {
      return Optional.empty();
    }
    boolean metered = light.output().isPresent() || light.head().output().isMetered();
    return Optional.of(
        Level.of(
            exposure,
            Known.COMPUTED,
            Uncertainty.ofModel(light, metered, longBurst, atTarget),
            new LevelSteps.ByModel(light.id().text(), atTarget, down, light.heads(), light.pops()),
            settings));
  }

  /**
   * From the light's own reading.
   *
   * @param flatOverDome what a flat receptor gets of this light over what a dome held the same way
   *     gets; 1 for a reading by a flat one
   */
  Optional<Level> metered(
      Light light, MeterReading reading, double flatOverDome, String pointer, List<String> needs) {
    Iso iso = reading.iso().orElse(settings.iso());
    MeterConstant constant = reading.receptor().constant();
    LuxSeconds whole = reading.fNumber().toExposure(iso, constant);
    LuxSeconds taken = LuxSeconds.NONE;
    UncertaintyBudget budget;
    Known ambientKnown = Known.METERED;
    LuxSeconds one = whole;
    if (reading.includesAmbient()) {
      if (setup.ambient().isEmpty()) {
        needs.add("/ambient");
        return Optional.empty();
      }
      LuxSeconds ambient = ambientBy(constant);
      if (ambient.value() >= whole.value()) {
        needs.add(pointer + "/reading");
        return Optional.empty();
      }
      taken = ambient;
      ambientKnown = setup.ambient().get().known();
      one = new LuxSeconds(whole.value() - taken.value());
      budget = Uncertainty.withoutAmbient(reading.known(), ambientKnown, whole, one);
    } else {
      budget = Uncertainty.of(reading.known());
    }
    return Optional.of(
        Level.of(
            one.times(light.pops() * flatOverDome),
            reading.known(),
            budget,
            new LevelSteps.ByReading(
                light.id().text(),
                reading.fNumber(),
                reading.known(),
                iso,
                taken,
                ambientKnown,
                light.pops(),
                reading.receptor(),
                flatOverDome),
            settings));
  }

  /** The ambient reads alike by either receptor, so it weighs as each one's constant does. */
  private LuxSeconds ambientBy(MeterConstant constant) {
    return new LuxSeconds(
        ambient.value() * (constant.luxSeconds() / MeterConstant.FLAT.luxSeconds()));
  }
}
