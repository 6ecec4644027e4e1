/**
 * A setup recomputed for another kit: which head and modifier make each light, at what power, with
 * which camera settings, and what is lost. Pure; may import {@code setup}, {@code gear} and {@code
 * engine}. Start reading at {@link lampwright.setup.adapting.AdaptationSearch}.
 */
@NullMarked
package lampwright.setup.adapting;

import org.jspecify.annotations.NullMarked;
