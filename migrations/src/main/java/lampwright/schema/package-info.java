/**
 * The database's shape: the SQL migrations, how they are applied, how a database is opened, and the
 * jOOQ classes generated from them. Uses {@code lampwright.postgres} to generate against a really
 * migrated PostgreSQL. Start reading at {@link lampwright.schema.WorkingDatabase}.
 */
@NullMarked
package lampwright.schema;

import org.jspecify.annotations.NullMarked;
