/**
 * The log of the day: takes and run-throughs with their readings, and what those say against the
 * figures of the setup that was shot. May import {@code setup}, {@code gear}, {@code people},
 * {@code engine} and {@code document}. Start reading at {@link lampwright.setup.takes.Take}.
 */
@NullMarked
package lampwright.setup.takes;

import org.jspecify.annotations.NullMarked;
