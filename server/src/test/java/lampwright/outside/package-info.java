/**
 * The API in the hands of tools of other houses, which know it by its description only: a linter, a
 * validating proxy, a client whose types are generated. Start with {@link
 * lampwright.outside.GeneratedClientTest}.
 */
@NullMarked
package lampwright.outside;

import org.jspecify.annotations.NullMarked;
