/**
 * How a source spreads its light over the directions: even faces, beams, tabulated candela
 * distributions, and what grids and snoots cut off.
 *
 * <p>May import {@code engine.unit} and the JDK; knows angles only, no places. Start reading at
 * {@link lampwright.engine.beam.Spread}.
 */
@NullMarked
package lampwright.engine.beam;

import org.jspecify.annotations.NullMarked;
