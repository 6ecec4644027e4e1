/** Tests of {@code lampwright.engine.power}. */
@NullMarked
package lampwright.engine.power;

import org.jspecify.annotations.NullMarked;
