/**
 * Locations: where setups are made, how one gets in, what there is of power and what can hurt, and
 * the light that was metered there. Records, their documents and pure decisions; may import {@code
 * people}, {@code engine} and {@code document}. Start reading at {@link lampwright.place.Location}.
 */
@NullMarked
package lampwright.place;

import org.jspecify.annotations.NullMarked;
