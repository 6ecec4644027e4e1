@NullMarked
package lampwright.search.filter;

import org.jspecify.annotations.NullMarked;
