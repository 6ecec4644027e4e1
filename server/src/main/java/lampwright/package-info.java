/**
 * The server's front door: reads the settings, builds each object by hand, starts. May use every
 * room of the house. Start reading at {@link lampwright.Lampwright}.
 */
@NullMarked
package lampwright;

import org.jspecify.annotations.NullMarked;
