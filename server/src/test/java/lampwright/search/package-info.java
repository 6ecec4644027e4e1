/** Tests of the index, with real files in a temporary folder. */
@NullMarked
package lampwright.search;

import org.jspecify.annotations.NullMarked;
