/**
 * Gear: heads, packs, modifiers, gels, bodies, lenses, filters, stands, and the kits they stand in.
 * Records and their documents; may import {@code engine} and {@code document}. Start reading at
 * {@link lampwright.gear.Kit}.
 */
@NullMarked
package lampwright.gear;

import org.jspecify.annotations.NullMarked;
