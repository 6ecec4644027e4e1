package lampwright.setup.figures;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Ambient;

/**
 * What the ambient does at the shooting exposure.
 *
 * @param exposure while the shutter is open
 * @param offset from the shooting exposure: -1 is one stop under
 * @param budget what its uncertainty is made of
 * @param settings that it is compared with
 */
public record AmbientFigures(
    Ambient ambient,
    LuxSeconds exposure,
    Stops offset,
    UncertaintyBudget budget,
    ExposureSettings settings) {

  /** One standard deviation. */
  public Stops uncertainty() {
    return budget.total();
  }

  /** The steps to the offset. */
  public Working working() {
    return Working.of(
        "ambient offset",
        offset.value(),
        "stops",
        "EV100 of the ambient − EV100 of the settings",
        Source.EXPOSURE_VALUE,
        Working.given("ambient", ambient.level().value(), "EV100", ambient.known()),
        settings.ev100Working());
  }
}
