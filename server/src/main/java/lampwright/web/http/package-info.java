/**
 * The door: who comes in, what a request may bring, how a refusal is answered. Imports the web
 * framework and the tasks; knows no page and no address but its own. Start reading at {@link
 * lampwright.web.http.Door}, then {@link lampwright.web.http.Refusals}.
 */
@NullMarked
package lampwright.web.http;

import org.jspecify.annotations.NullMarked;
