package lampwright.setup.figures;

import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * How much light one source gives where its reading is taken, as the meter there gets it: before
 * the shutter takes its part.
 *
 * @param exposure of the light alone, as the meter is held, all its heads and pops together
 * @param reading the same as an f-number at the shooting ISO
 * @param fromShooting in stops from what the shooting exposure asks for
 * @param known whether a meter said it or the engine computed it
 * @param budget what its uncertainty is made of
 * @param steps how the exposure was found
 * @param settings that it is compared with
 */
public record Level(
    LuxSeconds exposure,
    FNumber reading,
    Stops fromShooting,
    Known known,
    UncertaintyBudget budget,
    LevelSteps steps,
    ExposureSettings settings) {

  static Level of(
      LuxSeconds exposure,
      Known known,
      UncertaintyBudget budget,
      LevelSteps steps,
      ExposureSettings settings) {
    return new Level(
        exposure,
        FNumber.ofExposure(exposure, settings.iso(), MeterConstant.FLAT),
        settings.offsetOf(exposure, MeterConstant.FLAT),
        known,
        budget,
        steps,
        settings);
  }

  /** One standard deviation. */
  public Stops uncertainty() {
    return budget.total();
  }

  /** The steps to the level. */
  public Working working() {
    return Working.of(
        "level from the shooting exposure",
        fromShooting.value(),
        "stops",
        "log2(H / H_shooting)",
        Source.DERIVED,
        steps.working(exposure),
        settings.requiredExposureWorking(MeterConstant.FLAT));
  }
}
