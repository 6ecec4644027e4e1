/** What was really used, against hand-worked figures. Start reading at UsedDocumentTest. */
@NullMarked
package lampwright.setup.used;

import org.jspecify.annotations.NullMarked;
