/**
 * The optimiser: exact search over allotments of shared supplies. May import the JDK only. Start
 * reading at {@link lampwright.engine.match.AllotmentSearch}.
 */
@NullMarked
package lampwright.engine.match;

import org.jspecify.annotations.NullMarked;
