/**
 * Tests of the figures: against the worked examples of the reference, against facts of the trade,
 * and seeded sweeps. Start reading at WorkedExamplesTest.
 */
@NullMarked
package lampwright.setup.figures;

import org.jspecify.annotations.NullMarked;
