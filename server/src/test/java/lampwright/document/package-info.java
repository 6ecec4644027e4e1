/** Tests of forms, messages and JSON text. Start reading at FormsTest. */
@NullMarked
package lampwright.document;

import org.jspecify.annotations.NullMarked;
