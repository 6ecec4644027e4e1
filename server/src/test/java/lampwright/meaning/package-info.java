@NullMarked
package lampwright.meaning;

import org.jspecify.annotations.NullMarked;
