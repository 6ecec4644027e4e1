/**
 * How the light of a setup is, in few facts: who gives it, from where, how soft, how strong against
 * what; and how its finished picture looks. By this setups are found and compared. Pure; may import
 * {@code setup}, {@code setup.figures}, {@code gear}, {@code engine} and {@code document}. Start
 * reading at {@link lampwright.setup.signature.Signature}.
 */
@NullMarked
package lampwright.setup.signature;

import org.jspecify.annotations.NullMarked;
