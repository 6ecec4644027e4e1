@NullMarked
package lampwright.gear.exchange;

import org.jspecify.annotations.NullMarked;
