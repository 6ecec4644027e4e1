/**
 * Whether one kit makes each of very many setups, and how far off it is: the answer of {@link
 * lampwright.setup.adapting.AdaptationSearch} without its plan, in microseconds. Pure; may import
 * {@code setup}, {@code gear} and {@code engine}. Start reading at {@link
 * lampwright.setup.buildable.Judge}.
 */
@NullMarked
package lampwright.setup.buildable;

import org.jspecify.annotations.NullMarked;
