/**
 * The index of setups: a disposable copy of what the database holds, by which setups are found. Of
 * the other rooms it uses what texts mean, and the keys of phrases for its reasons; {@code filter}
 * in it knows no index. Start reading at {@link lampwright.search.Search}; {@link
 * lampwright.search.Follower} keeps the index true.
 */
@NullMarked
package lampwright.search;

import org.jspecify.annotations.NullMarked;
