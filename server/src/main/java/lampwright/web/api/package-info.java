/**
 * What programs ask: JSON to a task, a task's answer to JSON. Imports the door and the tasks, no
 * page. Start reading at {@link lampwright.web.api.SessionApi}.
 */
@NullMarked
package lampwright.web.api;

import org.jspecify.annotations.NullMarked;
