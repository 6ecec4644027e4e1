/**
 * What a day with one or more setups takes: what is carried, what is charged, and who does what
 * when. Pure; may import {@code setup}, {@code setup.figures}, {@code gear}, {@code place}, {@code
 * engine} and {@code language}. Start reading at {@link lampwright.setup.packing.PackingList} and
 * {@link lampwright.setup.packing.DayPlan}.
 */
@NullMarked
package lampwright.setup.packing;

import org.jspecify.annotations.NullMarked;
