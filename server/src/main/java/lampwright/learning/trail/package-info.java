/**
 * Trails: courses that authors put together, how far somebody has come on one, and who may sign a
 * build off. Pure decisions; may import drills, setups, people, documents and language. Start
 * reading at {@link lampwright.learning.trail.Trail}.
 */
@NullMarked
package lampwright.learning.trail;

import org.jspecify.annotations.NullMarked;
