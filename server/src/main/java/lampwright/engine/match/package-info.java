/**
 * The optimiser: exact search over assignments. May import the JDK only. Start reading at {@link
 * lampwright.engine.match.Assignment}.
 */
@NullMarked
package lampwright.engine.match;

import org.jspecify.annotations.NullMarked;
