@NullMarked
package lampwright.engine.map;

import org.jspecify.annotations.NullMarked;
