/**
 * What a source puts on a point: output, shape, modifier, distance, gel, direction, and sums of
 * lights. May import {@code engine}, {@code engine.unit}, {@code engine.exposure} and {@code
 * engine.beam}. Start reading at {@link lampwright.engine.light.LightAtTarget} for one light of a
 * setup, at {@link lampwright.engine.light.PlacedSource} for the geometry.
 */
@NullMarked
package lampwright.engine.light;

import org.jspecify.annotations.NullMarked;
