/**
 * Levels of light over a plane, the reading map of a setup, and their contours.
 *
 * <p>May import {@code engine}, {@code engine.unit}, {@code engine.beam} and {@code engine.light}.
 * Start reading at {@link lampwright.engine.map.ReadingMap}.
 */
@NullMarked
package lampwright.engine.map;

import org.jspecify.annotations.NullMarked;
