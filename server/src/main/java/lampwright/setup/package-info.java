/**
 * The setup document: what a picture's lighting was, light by light, and why. Records and their
 * document forms; may import {@code gear}, {@code place}, {@code engine}, {@code document} and, for
 * sentences that are not yet in anybody's language, {@code language}. Start reading at {@link
 * lampwright.setup.SetupDocument}; what is computed from it lives in {@code setup.figures} and
 * {@code setup.adapting}.
 */
@NullMarked
package lampwright.setup;

import org.jspecify.annotations.NullMarked;
