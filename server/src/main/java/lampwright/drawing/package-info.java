/**
 * Setups and figures turned into SVG drawings of our own; pure functions. May import the engine and
 * the setup's records, never the store, the tasks or the web. Start reading at {@link
 * lampwright.drawing.Plan}.
 */
@NullMarked
package lampwright.drawing;

import org.jspecify.annotations.NullMarked;
