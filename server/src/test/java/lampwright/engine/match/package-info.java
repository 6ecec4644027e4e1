/** Tests of {@code lampwright.engine.match}. */
@NullMarked
package lampwright.engine.match;

import org.jspecify.annotations.NullMarked;
