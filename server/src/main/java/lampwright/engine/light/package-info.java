/**
 * What a source puts on a point: output, shape, modifier, distance, gel, direction, and sums of
 * lights. May import {@code engine}, {@code engine.unit} and {@code engine.exposure}. Start reading
 * at {@link lampwright.engine.light.LightAtTarget}.
 */
@NullMarked
package lampwright.engine.light;

import org.jspecify.annotations.NullMarked;
