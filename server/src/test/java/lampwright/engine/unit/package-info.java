/** Tests of {@code lampwright.engine.unit}. */
@NullMarked
package lampwright.engine.unit;

import org.jspecify.annotations.NullMarked;
