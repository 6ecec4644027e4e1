/**
 * Exposure value, apertures, times, film speeds and the marks printed for them; turns light and
 * camera settings into each other. May import {@code engine} and {@code engine.unit}. Start reading
 * at {@link lampwright.engine.exposure.ExposureSettings}.
 */
@NullMarked
package lampwright.engine.exposure;

import org.jspecify.annotations.NullMarked;
