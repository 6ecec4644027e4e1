/**
 * Tests of adaptations: against the worked examples of the reference, against exhaustive search,
 * and seeded sweeps. Start reading at AdaptationTest.
 */
@NullMarked
package lampwright.setup.adapting;

import org.jspecify.annotations.NullMarked;
