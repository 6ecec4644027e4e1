/** Tests of {@code lampwright.engine.colour}. */
@NullMarked
package lampwright.engine.colour;

import org.jspecify.annotations.NullMarked;
