/**
 * Says what each light of a setup is for by turning it off: what every meter then gets, and what
 * that does to the sides of the face. Pure; may import {@code setup}, {@code setup.figures} and
 * {@code engine}. Start reading at {@link lampwright.setup.without.LightByLight}.
 *
 * <p><b>What is added.</b> Light, never stops: a level is {@code log2(Σ H_i / H_shooting)} over the
 * lights that burn and the ambient, each as {@link lampwright.setup.figures.SpillFigures} has it.
 * With everything on it is therefore the figures' own number, to the last digit.
 *
 * <p><b>Where the meter is.</b> At each light's target it is held as that light alone is metered,
 * so that a rim shows what it does; at the face and at every subject it is held toward the camera.
 *
 * <p><b>Two sides.</b> The lit side of the face is all that a meter toward the camera gets, the
 * shadow side the same with every key shaded off. The lighting ratio is the figures' own: key and
 * fill together against fill, of the lights that are for the face.
 *
 * <p><b>What it leaves out.</b> What the figures leave out: nothing throws a shadow, nothing
 * bounces.
 */
@NullMarked
package lampwright.setup.without;

import org.jspecify.annotations.NullMarked;
