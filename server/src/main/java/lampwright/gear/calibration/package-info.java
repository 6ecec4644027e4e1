/**
 * Calibration: what one's own readings say of one's own heads and modifiers, by robust least
 * squares in stops. The only room for the numerics library; may import {@code engine}, {@code
 * document} and {@code gear}. Start reading at {@link
 * lampwright.gear.calibration.CalibrationSheet}.
 */
@NullMarked
package lampwright.gear.calibration;

import org.jspecify.annotations.NullMarked;
