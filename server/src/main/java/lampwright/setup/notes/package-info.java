/**
 * What people write beside a setup. May import {@code setup}, {@code people} and {@code document}.
 * Start reading at {@link lampwright.setup.notes.Note}.
 */
@NullMarked
package lampwright.setup.notes;

import org.jspecify.annotations.NullMarked;
