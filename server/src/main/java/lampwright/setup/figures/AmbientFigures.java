package lampwright.setup.figures;

import lampwright.engine.Working;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Ambient;

/**
 * What the ambient does at the shooting exposure.
 *
 * @param exposure while the shutter is open
 * @param offset from the shooting exposure: -1 is one stop under
 */
public record AmbientFigures(
    Ambient ambient, LuxSeconds exposure, Stops offset, Stops uncertainty, Working working) {}
