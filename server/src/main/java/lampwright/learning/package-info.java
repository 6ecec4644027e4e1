/**
 * Bringing on assistants: drills, trails and clearance, as pure decisions. May import setups, gear,
 * people, documents, language and the engine. Start reading at {@link
 * lampwright.learning.drill.Drills}.
 */
@NullMarked
package lampwright.learning;

import org.jspecify.annotations.NullMarked;
