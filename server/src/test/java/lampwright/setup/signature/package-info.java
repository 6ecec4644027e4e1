/**
 * Tests of signatures: each rule against the worked examples of the reference and facts of the
 * trade, what must not change a signature, and the whole demo. Start reading at SignatureTest.
 */
@NullMarked
package lampwright.setup.signature;

import org.jspecify.annotations.NullMarked;
