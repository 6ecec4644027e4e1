/** Tests of whether a kit makes very many setups. Start reading at BuildableTest. */
@NullMarked
package lampwright.setup.buildable;

import org.jspecify.annotations.NullMarked;
