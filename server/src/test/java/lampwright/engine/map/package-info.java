/** Tests of {@code lampwright.engine.map}. */
@NullMarked
package lampwright.engine.map;

import org.jspecify.annotations.NullMarked;
