package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.setup.figures.ShutterComputation;
import lampwright.setup.figures.ShutterEffect;

/**
 * What a shutter takes from every head of a kit at one time, for every power.
 *
 * @param clear whether it takes nothing from any of them
 * @param ofModel in the kit's order; empty where the head and the time do not go together
 */
record ShutterTable(boolean clear, List<Optional<Losses>> ofModel) {

  /** Less is rounding, and would only make equal times look different. */
  private static final double ROUNDING = 1e-9;

  /** Less at an edge is not seen and costs nothing: a judgement. */
  static final double SEEN_AT_AN_EDGE = 0.05;

  /** What it takes from one head, by the head's step. */
  static final class Losses {
    private final double[] wholeFrame;
    private final double[] edge;

    private Losses(int steps) {
      this.wholeFrame = new double[steps];
      this.edge = new double[steps];
    }

    /** Stops that every part of the frame loses. */
    double wholeFrame(int step) {
      return wholeFrame[step];
    }

    /** Stops at the edge that is exposed first, beyond the whole frame's, as far as seen. */
    double edge(int step) {
      return edge[step];
    }
  }

  static ShutterTable of(Body body, ShutterTime time, KitTonight kit) {
    ShutterComputation shutter = new ShutterComputation(body);
    List<Optional<Losses>> all = new ArrayList<>();
    boolean clear = true;
    for (KitTonight.HeadModel model : kit.heads()) {
      List<Stops> steps = LightMakings.range(model.head()).settings();
      Losses losses = new Losses(steps.size());
      boolean dark = false;
      for (int i = 0; i < steps.size() && !dark; i++) {
        ShutterEffect effect = shutter.effect(model.head(), Optional.of(steps.get(i)), time);
        dark = effect.litShare() < 1 || isTooFastForALeaf(body, shutter, time);
        losses.wholeFrame[i] = tidy(effect.wholeFrameOrNone());
        double edge = effect.worstEdge().orElse(Stops.ZERO).value();
        losses.edge[i] = edge < SEEN_AT_AN_EDGE ? 0 : edge;
        clear &= losses.wholeFrame[i] == 0 && losses.edge[i] == 0;
      }
      clear &= !dark;
      all.add(dark ? Optional.empty() : Optional.of(losses));
    }
    return new ShutterTable(clear, all);
  }

  private static boolean isTooFastForALeaf(
      Body body, ShutterComputation shutter, ShutterTime time) {
    return body.shutter() == Body.Shutter.LEAF && shutter.isFasterThanSync(time);
  }

  private static double tidy(Stops loss) {
    return loss.value() < ROUNDING ? 0 : loss.value();
  }
}
