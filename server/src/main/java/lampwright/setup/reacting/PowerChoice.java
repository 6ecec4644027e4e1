package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * At one setting of the camera: which lights to turn, and to which steps, for each number of dials.
 * Lights do not depend on each other there, so the least loss for so many dials is found light by
 * light; every step of every dial is tried.
 */
final class PowerChoice {

  static final double NEVER = Double.POSITIVE_INFINITY;

  private static final double TOLERANCE = Miss.TOLERANCE.value() + 1e-9;

  private final List<LightDial> dials;
  private final int most;
  private final double[] leftLoss;
  private final double[] leftHeld;
  private final Turned[] turned;
  private final double[] least;
  private final double[] leastHeld;

  /** The best step of a dial by loss, and the best that holds the light. */
  private static final class Turned {
    private int step;
    private double loss;
    private int heldStep;
    private double heldLoss;
  }

  PowerChoice(List<LightDial> dials) {
    this.dials = List.copyOf(dials);
    this.most = dials.stream().mapToInt(LightDial::dials).sum();
    this.leftLoss = new double[dials.size()];
    this.leftHeld = new double[dials.size()];
    this.turned = new Turned[dials.size()];
    for (int i = 0; i < turned.length; i++) {
      turned[i] = new Turned();
    }
    this.least = new double[most + 1];
    this.leastHeld = new double[most + 1];
  }

  /** The most dials that the lights have together. */
  int most() {
    return most;
  }

  /** Tries all at a shutter time, with so many stops more light let in by the camera. */
  void at(int time, double gain) {
    for (int i = 0; i < turned.length; i++) {
      weigh(i, dials.get(i), time, gain);
    }
    sum(least, false);
    sum(leastHeld, true);
  }

  /** The least loss by the lights with exactly so many dials turned. */
  double least(int count) {
    return least[count];
  }

  /** The same where each light is within a third of where it was; NEVER where that cannot be. */
  double leastHeld(int count) {
    return leastHeld[count];
  }

  private void weigh(int i, LightDial dial, int time, double gain) {
    double[] misses = dial.missesAt(time);
    double weight = dial.weight();
    Turned best = turned[i];
    best.step = Candidate.LEFT;
    best.loss = NEVER;
    best.heldStep = Candidate.LEFT;
    best.heldLoss = NEVER;
    for (int step = 0; step < dial.steps(); step++) {
      if (dial.isNow(step) && !dial.isFree()) {
        continue;
      }
      double miss = Math.abs(misses[step] + gain);
      double loss = weight * miss + dial.priceOf(step);
      if (loss < best.loss) {
        best.loss = loss;
        best.step = step;
      }
      if (miss <= TOLERANCE && loss < best.heldLoss) {
        best.heldLoss = loss;
        best.heldStep = step;
      }
    }
    double left = Math.abs(misses[dial.steps()] + gain);
    boolean mustTurn = dial.isFree() && dial.steps() > 0;
    leftLoss[i] = mustTurn ? NEVER : weight * left;
    leftHeld[i] = mustTurn || left > TOLERANCE ? NEVER : weight * left;
  }

  private void sum(double[] sums, boolean held) {
    Arrays.fill(sums, NEVER);
    sums[0] = 0;
    for (int i = 0; i < turned.length; i++) {
      add(i, held, sums, sums);
    }
  }

  /** From the most dials down, so that {@code from} may be the array that is written. */
  private void add(int i, boolean held, double[] from, double[] to) {
    double left = held ? leftHeld[i] : leftLoss[i];
    double turn = held ? turned[i].heldLoss : turned[i].loss;
    int more = dials.get(i).dials();
    for (int count = to.length - 1; count >= 0; count--) {
      double without = from[count] + left;
      double with = count >= more ? from[count - more] + turn : NEVER;
      to[count] = Math.min(without, with);
    }
  }

  /** Each light's step for the least loss with so many dials, at what was tried last. */
  List<Integer> steps(int count, boolean held) {
    double[][] sums = new double[turned.length + 1][most + 1];
    Arrays.fill(sums[0], NEVER);
    sums[0][0] = 0;
    for (int i = 0; i < turned.length; i++) {
      add(i, held, sums[i], sums[i + 1]);
    }
    List<Integer> steps = new ArrayList<>();
    int rest = count;
    for (int i = turned.length - 1; i >= 0; i--) {
      double left = sums[i][rest] + (held ? leftHeld[i] : leftLoss[i]);
      if (left == sums[i + 1][rest] && left < NEVER) {
        steps.addFirst(Candidate.LEFT);
      } else {
        steps.addFirst(held ? turned[i].heldStep : turned[i].step);
        rest -= dials.get(i).dials();
      }
    }
    return steps;
  }
}
