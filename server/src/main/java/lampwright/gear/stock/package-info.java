/**
 * The studio's stock: gear that is kept once, with how many of it there are, its state and what was
 * metered of it, and the kits that share it. Records and their documents; may import {@code
 * engine}, {@code document}, {@code gear} and {@code gear.calibration}. Start reading at {@link
 * lampwright.gear.stock.GearItem}, then {@link lampwright.gear.stock.WholeKit}.
 */
@NullMarked
package lampwright.gear.stock;

import org.jspecify.annotations.NullMarked;
