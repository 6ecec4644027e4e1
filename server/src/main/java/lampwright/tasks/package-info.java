/**
 * What a person can do: each task asks leave, opens the transaction, calls pure code and lets the
 * store save. May import the store, the search index and everything below them; knows nothing of
 * HTTP. Start reading at {@link lampwright.tasks.Refused} and {@link lampwright.tasks.Caller}.
 */
@NullMarked
package lampwright.tasks;

import org.jspecify.annotations.NullMarked;
