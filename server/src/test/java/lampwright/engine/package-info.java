/**
 * Tests of the engine: against the outside values of {@code lampwright/reference}, against facts of
 * the trade, fast against slow, and seeded sweeps. Start reading at CheckValuesTest.
 */
@NullMarked
package lampwright.engine;

import org.jspecify.annotations.NullMarked;
