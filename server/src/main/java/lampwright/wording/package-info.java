/**
 * Turns figures, gear and lights into the words and numbers that people read, in their own language
 * and units: what pages, the browser's editor and printed sheets all print alike. Imports setups,
 * gear, places, the language and the engine; compiled for the browser too. Start reading at {@link
 * lampwright.wording.Wording}, then {@link lampwright.wording.KeyFigures} and {@link
 * lampwright.wording.LightRow}.
 */
@NullMarked
package lampwright.wording;

import org.jspecify.annotations.NullMarked;
