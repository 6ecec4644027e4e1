/**
 * What setups can be filtered by and counted by, and the plain words in square brackets that say so
 * in a search. May use the JDK only: it knows no index. Start reading at {@link
 * lampwright.search.filter.Trait}; {@link lampwright.search.filter.FilterReader} reads a bracket,
 * {@link lampwright.search.filter.FilterWriter} writes it.
 */
@NullMarked
package lampwright.search.filter;

import org.jspecify.annotations.NullMarked;
