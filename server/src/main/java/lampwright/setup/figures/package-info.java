/**
 * What is computed from a setup document: each light's level at its target, the sums, the ambient.
 * Pure; may import {@code setup}, {@code gear} and {@code engine}. Start reading at {@link
 * lampwright.setup.figures.Figures}.
 */
@NullMarked
package lampwright.setup.figures;

import org.jspecify.annotations.NullMarked;
