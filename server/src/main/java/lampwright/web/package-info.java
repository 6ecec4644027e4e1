/**
 * The HTTP: every URL in one file, and what stands behind each in the packages below. Start reading
 * at {@link lampwright.web.Routes}.
 */
@NullMarked
package lampwright.web;

import org.jspecify.annotations.NullMarked;
