/**
 * A studio, or one setup, as one file that leaves the house and comes back: a bag (RFC 8493) in a
 * ZIP. What stands in it, how it is written, and how one that a stranger sends is read and checked
 * before anything is believed. May import {@code setup}, {@code gear}, {@code place}, {@code
 * people} and {@code document}; no database, no clock. Start reading at {@link
 * lampwright.archive.ArchiveKind}, then {@link lampwright.archive.Bag}.
 */
@NullMarked
package lampwright.archive;

import org.jspecify.annotations.NullMarked;
