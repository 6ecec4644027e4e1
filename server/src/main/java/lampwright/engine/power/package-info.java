/**
 * What a head can be set to and what that costs: power steps, energy, recycle, flash duration. May
 * import {@code engine} and {@code engine.unit}. Start reading at {@link
 * lampwright.engine.power.PowerRange}.
 */
@NullMarked
package lampwright.engine.power;

import org.jspecify.annotations.NullMarked;
