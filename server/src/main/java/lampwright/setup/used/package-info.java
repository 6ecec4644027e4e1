/**
 * What was really used of a setup: the document that it makes, and the plan compared with it. Pure;
 * may import {@code setup}, {@code setup.figures}, {@code gear} and {@code engine}. Start reading
 * at {@link lampwright.setup.used.UsedDocument}.
 */
@NullMarked
package lampwright.setup.used;

import org.jspecify.annotations.NullMarked;
