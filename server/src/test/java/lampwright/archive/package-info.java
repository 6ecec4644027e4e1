@NullMarked
package lampwright.archive;

import org.jspecify.annotations.NullMarked;
