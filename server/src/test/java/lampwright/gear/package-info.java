/** Tests of {@code lampwright.gear}. */
@NullMarked
package lampwright.gear;

import org.jspecify.annotations.NullMarked;
