/**
 * Says what to change when something happens to a setup that stands: the ambient falls, a light is
 * moved, a head dies. Pure; may import {@code setup}, {@code setup.figures}, the weights of {@code
 * setup.adapting}, {@code gear} and {@code engine}; compiled for the browser too. Start reading at
 * {@link lampwright.setup.reacting.Reactions}.
 *
 * <p><b>What must hold.</b> Each light's level in the picture, less what the shutter takes, and the
 * ambient, both in stops from the shooting exposure: {@code L_i} and {@code A} as the setup had
 * them, {@code L_i'} and {@code A'} after. A miss is {@code m = L' − L}. It is held where {@code
 * |m| ≤ 1/3}.
 *
 * <p><b>What can be turned.</b> Aperture, time, ISO and filter, in stops of light {@code a, t, s,
 * f}, on the camera's own marks within lens, sync and ISO bounds; each light's power {@code p_i} on
 * its head's own steps; for a dead head the places of heads ({@link
 * lampwright.setup.reacting.Stage}): a spare one, another light's, or a neighbour of the same role
 * at the same target that makes the sum there whole, up to two stops. Then {@code L_i' + a + s + f
 * + p_i} less the change of the shutter's part is the light's level, and {@code A' + a + s + f + t}
 * the ambient's. A dial is one thing that a hand turns: each of the camera's, each head's power (a
 * light of n heads has n), and two for a head that is put in another's place.
 *
 * <p><b>What is lost.</b> {@code J = Σ w_i |m_i| + 1.5 c(m_A) + 0.5 |a| + w_t |t| + 0.2 max(0, s) +
 * 0.1 Σ max(0, p_i) + 8 Σ w_j} over the lights j that do not shine, with the weights of roles and
 * the count {@code c} of {@link lampwright.setup.adapting.Weights}, {@code w_t} 0.25, or 0.75 where
 * a subject moves. Half of a dead light's part is left where a neighbour carries its share.
 *
 * <p><b>Which ways are told.</b> For each stage, each set of camera dials and each number of dials
 * the way of least J, of all and of those that hold everything, by trying everything; of times only
 * those that hold the ambient, the nearest where none does, and the one now. A way that turns all
 * that another turns and more is dropped unless each dial more saves 0.1 of J. Where some way holds
 * everything only such are told: by number of dials, then J; all than which no way loses less with
 * as few dials, and beside them, with at most one dial of the camera, the one with fewest dials and
 * the one with least J. Where none does: in each stage these two, by J, then dials. Six at most,
 * and none that loses as much as touching nothing.
 *
 * <p><b>Where it departs.</b> Spill is not weighed: a light's level is its own at its own target.
 * Softness is not weighed: a moved light stays where it was moved to. Every figure of a way is
 * {@link lampwright.setup.figures.FiguresComputation}'s of the changed document.
 */
@NullMarked
package lampwright.setup.reacting;

import org.jspecify.annotations.NullMarked;
