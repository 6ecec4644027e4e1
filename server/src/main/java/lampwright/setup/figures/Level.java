package lampwright.setup.figures;

import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Known;

/**
 * How much light one source gives where its reading is taken.
 *
 * @param exposure of the light alone, as the meter is held
 * @param reading the same as an f-number at the shooting ISO
 * @param fromShooting in stops from what the shooting exposure asks for
 * @param known whether a meter said it or the engine computed it
 * @param uncertainty one standard deviation
 */
public record Level(
    LuxSeconds exposure,
    FNumber reading,
    Stops fromShooting,
    Known known,
    Stops uncertainty,
    Working working) {}
