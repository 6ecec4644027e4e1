/**
 * A whole server as one file: a ZIP of every table's rows in the text format of PostgreSQL's {@code
 * COPY}, every file of pictures, and what proves them; written while the server works, read without
 * believing it. May import {@code store} (the files of pictures), {@code schema} (the database as
 * its owner sees it) and {@code document}. Start reading at {@link lampwright.backup.Manifest}.
 */
@NullMarked
package lampwright.backup;

import org.jspecify.annotations.NullMarked;
