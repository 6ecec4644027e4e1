/**
 * What a head can be set to and what that costs: power steps, energy, recycle, flash duration,
 * mains, batteries; and what a stand holds in the wind. May import {@code engine} and {@code
 * engine.unit}. Start reading at {@link lampwright.engine.power.PowerRange}, for mains at {@link
 * lampwright.engine.power.MainsLoad}, for wind at {@link lampwright.engine.power.StandInWind}.
 */
@NullMarked
package lampwright.engine.power;

import org.jspecify.annotations.NullMarked;
