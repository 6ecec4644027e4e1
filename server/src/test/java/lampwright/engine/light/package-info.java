/** Tests of {@code lampwright.engine.light}. */
@NullMarked
package lampwright.engine.light;

import org.jspecify.annotations.NullMarked;
