/**
 * Colours of a picture as numbers: signals, light, lightness, hue, differences, and the tones of a
 * whole picture. They describe the developed picture, its grading included, not the light on set.
 *
 * <p>May import {@code engine.unit} and the JDK. Start reading at {@link
 * lampwright.engine.colour.Srgb}, for a whole picture at {@link
 * lampwright.engine.colour.PictureTones}.
 */
@NullMarked
package lampwright.engine.colour;

import org.jspecify.annotations.NullMarked;
