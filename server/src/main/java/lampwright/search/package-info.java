/**
 * The index of setups: a disposable copy of what the database holds, by which setups are found. May
 * use Lucene, the JDK and the logging facade, and nothing of the other rooms. Start reading at
 * {@link lampwright.search.Search}; {@link lampwright.search.Follower} keeps the index true.
 */
@NullMarked
package lampwright.search;

import org.jspecify.annotations.NullMarked;
