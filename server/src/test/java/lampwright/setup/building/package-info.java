/** Tests of what the crew is told while it builds: places, and readings light by light. */
@NullMarked
package lampwright.setup.building;

import org.jspecify.annotations.NullMarked;
