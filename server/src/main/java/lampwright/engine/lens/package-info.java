/**
 * Formats, framing, depth of field, diffraction and blur by movement. May import {@code engine},
 * {@code engine.unit} and {@code engine.exposure}. Start reading at {@link
 * lampwright.engine.lens.FocusedLens}.
 */
@NullMarked
package lampwright.engine.lens;

import org.jspecify.annotations.NullMarked;
