/**
 * Says what to change when something happens to a setup that stands: the ambient falls, a light is
 * moved, a head dies. Pure; may import {@code setup}, {@code setup.figures}, {@code
 * setup.adapting}'s weights, {@code gear} and {@code engine}; compiled for the browser too. Start
 * reading at {@link lampwright.setup.reacting.Reactions}.
 */
@NullMarked
package lampwright.setup.reacting;

import org.jspecify.annotations.NullMarked;
