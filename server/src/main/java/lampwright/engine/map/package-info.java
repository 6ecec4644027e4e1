/**
 * Levels over a plane: the reading map of a setup.
 *
 * <p>May import {@code engine}, {@code engine.unit}, {@code engine.beam} and {@code engine.light}.
 * Start reading at {@link lampwright.engine.map.ReadingMap}.
 */
@NullMarked
package lampwright.engine.map;

import org.jspecify.annotations.NullMarked;
