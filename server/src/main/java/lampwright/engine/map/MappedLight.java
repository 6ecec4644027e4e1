package lampwright.engine.map;

import lampwright.engine.light.PlacedSource;
import lampwright.engine.unit.CandelaSeconds;

/**
 * A light as a map takes it.
 *
 * @param source where it stands, its shape and spread
 * @param peak its far-away intensity on the axis, power and gels taken in
 */
public record MappedLight(PlacedSource source, CandelaSeconds peak) {}
