package lampwright.gear.calibration;

import lampwright.engine.unit.Stops;

/**
 * How sure a calibrated value is.
 *
 * @param standardError one standard deviation
 * @param within95 half of the interval that holds the true value in 95 of 100 cases; wider than two
 *     standard errors where readings are few
 */
public record Uncertainty(Stops standardError, Stops within95) {}
