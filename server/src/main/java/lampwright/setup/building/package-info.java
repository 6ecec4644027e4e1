/**
 * What the field sheet says that no other figure does: places as one walks to them, and what the
 * meter gives step by step. It may use the rest of {@code setup}; start with {@link
 * lampwright.setup.building.BuildUp}.
 */
@NullMarked
package lampwright.setup.building;

import org.jspecify.annotations.NullMarked;
