/** Tests of {@code lampwright.engine.beam}. */
@NullMarked
package lampwright.engine.beam;

import org.jspecify.annotations.NullMarked;
