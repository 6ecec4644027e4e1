/** Tests of what a day takes: packing, charging and building. */
@NullMarked
package lampwright.setup.packing;

import org.jspecify.annotations.NullMarked;
