/** Tests of {@code lampwright.engine.lens}. */
@NullMarked
package lampwright.engine.lens;

import org.jspecify.annotations.NullMarked;
