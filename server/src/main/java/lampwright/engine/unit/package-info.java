/**
 * The units everything is counted in, one small record each; may import the JDK only. Start reading
 * at {@link lampwright.engine.unit.Stops}.
 */
@NullMarked
package lampwright.engine.unit;

import org.jspecify.annotations.NullMarked;
