/** Levels of light over a plane, and their contours. */
@NullMarked
package lampwright.engine.map;

import org.jspecify.annotations.NullMarked;
