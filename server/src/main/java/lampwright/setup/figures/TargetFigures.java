package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.Target;

/**
 * All the light at one target together.
 *
 * @param target as its first light names it
 * @param lights the lights that are for this target
 * @param sum flash and ambient, toward the camera, or on the surface where the target is one
 * @param reading what a meter would give for all of it at the shooting ISO
 * @param offset in stops from the shooting exposure
 * @param ratio key and fill together against fill, where the target has both
 */
public record TargetFigures(
    Target target,
    List<LightId> lights,
    LightSum sum,
    FNumber reading,
    Stops offset,
    Optional<LightingRatio> ratio,
    Working working) {}
