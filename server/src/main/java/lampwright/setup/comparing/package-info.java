/**
 * What differs between two setup documents, in the trade's words. Pure; may import {@code setup},
 * {@code setup.figures}, {@code gear}, {@code engine} and {@code document}. Start reading at {@link
 * lampwright.setup.comparing.Comparison}.
 */
@NullMarked
package lampwright.setup.comparing;

import org.jspecify.annotations.NullMarked;
