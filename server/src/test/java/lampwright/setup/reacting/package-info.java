/**
 * Tests of what to change now: against the trade's habits, against brute force, and seeded sweeps.
 * Start reading at ReactionsTest.
 */
@NullMarked
package lampwright.setup.reacting;

import org.jspecify.annotations.NullMarked;
