package lampwright.engine.sun;

import java.time.Instant;
import lampwright.engine.unit.Degrees;

/**
 * A moment at which the sun comes near to where it is wanted.
 *
 * @param at to the second
 * @param sun where it stands then
 * @param miss how far that is from what was wanted, without air, 0 or more
 */
public record Encounter(Instant at, SunPosition sun, Degrees miss) {}
