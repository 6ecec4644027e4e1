/**
 * The database's shape: the SQL migrations, how they are applied, and the jOOQ classes generated
 * from them. Uses {@code lampwright.postgres} to generate against a really migrated PostgreSQL.
 * Start reading at {@link lampwright.schema.Generate}.
 */
@NullMarked
package lampwright.schema;

import org.jspecify.annotations.NullMarked;
