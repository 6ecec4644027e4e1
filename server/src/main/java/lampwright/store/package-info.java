/**
 * The SQL: the only package that knows jOOQ and the pool. One class a noun, made with the {@link
 * lampwright.store.Transaction} that says whose rows it works on. May import {@code schema}, {@code
 * archive}, {@code setup}, {@code gear}, {@code people} and {@code engine}. Start reading at {@link
 * lampwright.store.Database}.
 */
@NullMarked
package lampwright.store;

import org.jspecify.annotations.NullMarked;
