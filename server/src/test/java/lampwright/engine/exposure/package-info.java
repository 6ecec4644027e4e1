/** Tests of {@code lampwright.engine.exposure}. */
@NullMarked
package lampwright.engine.exposure;

import org.jspecify.annotations.NullMarked;
