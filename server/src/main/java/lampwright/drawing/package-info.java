/**
 * Setups, figures, places and calibrations turned into SVG drawings of our own, in the reader's
 * language and unit; pure functions. May import the engine, the languages and the records of setup,
 * gear and place, never the store, the tasks or the web. Start reading at {@link
 * lampwright.drawing.Plan}.
 */
@NullMarked
package lampwright.drawing;

import org.jspecify.annotations.NullMarked;
