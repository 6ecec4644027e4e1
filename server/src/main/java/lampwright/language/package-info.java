/**
 * The languages and units in which a person reads: the phrases of each language, and how lengths
 * and stops are written. Imports the engine's units only; compiled for the browser too. Start
 * reading at {@link lampwright.language.Notation}.
 */
@NullMarked
package lampwright.language;

import org.jspecify.annotations.NullMarked;
