/** Tests of {@code lampwright.engine.sun}. */
@NullMarked
package lampwright.engine.sun;

import org.jspecify.annotations.NullMarked;
