/**
 * Drills: questions with a computed answer, made by the engine from a studio's own setups and kits.
 * A drill is given by its kind, its material and a seed, and comes out the same every time. May
 * import setups, gear, language and the engine. Start reading at {@link
 * lampwright.learning.drill.Drills}.
 *
 * <p>A drill is only asked where the rule of the trade that it trains and the engine agree, from
 * the rounded numbers that it shows, and where no other answer could be right too.
 */
@NullMarked
package lampwright.learning.drill;

import org.jspecify.annotations.NullMarked;
