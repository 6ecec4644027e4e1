package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;

/**
 * When an adaptation is truly another one: when somebody would notice that it is better in at least
 * one matter. What is better in none is only dearer.
 */
final class Ways {

  /** A third of a stop is just visible side by side; common practice, no source. */
  private static final double AMBIENT_STOPS = 1.0 / 3;

  private static final double DEPTH_STOPS = 2.0 / 3;
  private static final double TIME_STOPS = 2.0 / 3;
  private static final double ISO_STOPS = 1;
  private static final double FRAMING_DOUBLINGS = 0.1;

  /** A third of a stop of the key, or the like of lesser lights. */
  private static final double LEVELS_COST = 1;

  private static final double SHAPE_COST = 1;
  private static final double COLOUR_COST = 0.3;
  private static final double EVENNESS_COST = 0.3;
  private static final double KG = 2;
  private static final double WAIT_S = 0.5;

  /** A way that costs so many stops more than the best is no choice any more. */
  static final double MOST_DEARER = 4;

  /** Rounding of doubles. */
  private static final double ROUNDING = 1e-9;

  private Ways() {}

  /**
   * Asks whether a plan is noticeably better than another in something, and does not leave more
   * lights out for it.
   */
  static boolean isAnother(AdaptationPlan one, AdaptationPlan other, Weights weights) {
    return one.unlit() <= other.unlit() && !betterIn(one, other, weights).isEmpty();
  }

  /**
   * Asks whether a setting may be noticeably better than a plan in something, whatever its lights
   * do: in what the camera does, or in what the plan's own lights leave to be bettered.
   *
   * @param leastCarrying what any way to make all lights costs to carry
   */
  static boolean mayBeBetter(
      CameraCost setting, AdaptationPlan than, double leastCarrying, Weights weights) {
    double carrying = than.cost(Matter.CARRYING) - leastCarrying;
    return than.cost(Matter.LEVELS) >= LEVELS_COST - ROUNDING
        || than.cost(Matter.SHAPE) >= SHAPE_COST - ROUNDING
        || than.cost(Matter.COLOUR) >= COLOUR_COST - ROUNDING
        || than.cost(Matter.EVENNESS) >= EVENNESS_COST - ROUNDING
        || (weights.carryPerKg() > 0 && carrying / weights.carryPerKg() >= KG - ROUNDING)
        || than.waitS() >= WAIT_S - ROUNDING
        || isCameraBetter(setting, than.cameraCost());
  }

  /** The matters in which a plan is noticeably better than another. */
  static List<Matter> betterIn(AdaptationPlan one, AdaptationPlan other, Weights weights) {
    List<Matter> better = new ArrayList<>();
    add(better, Matter.LEVELS, gain(one, other, Matter.LEVELS), LEVELS_COST);
    better.addAll(cameraBetterIn(one.cameraCost(), other.cameraCost()));
    add(better, Matter.SHAPE, gain(one, other, Matter.SHAPE), SHAPE_COST);
    add(better, Matter.COLOUR, gain(one, other, Matter.COLOUR), COLOUR_COST);
    add(better, Matter.EVENNESS, gain(one, other, Matter.EVENNESS), EVENNESS_COST);
    add(better, Matter.CARRYING, kg(one, other, weights), KG);
    add(better, Matter.PACE, other.waitS() - one.waitS(), WAIT_S);
    return better;
  }

  private static boolean isCameraBetter(CameraCost a, CameraCost b) {
    return nearer(a.ambientStops(), b.ambientStops()) >= AMBIENT_STOPS - ROUNDING
        || nearer(a.depthStops(), b.depthStops()) >= DEPTH_STOPS - ROUNDING
        || nearer(a.timeStops(), b.timeStops()) >= TIME_STOPS - ROUNDING
        || b.isoStops() - a.isoStops() >= ISO_STOPS - ROUNDING
        || nearer(a.framing(), b.framing()) >= FRAMING_DOUBLINGS - ROUNDING;
  }

  private static List<Matter> cameraBetterIn(CameraCost a, CameraCost b) {
    List<Matter> better = new ArrayList<>();
    add(better, Matter.AMBIENT, nearer(a.ambientStops(), b.ambientStops()), AMBIENT_STOPS);
    add(better, Matter.DEPTH, nearer(a.depthStops(), b.depthStops()), DEPTH_STOPS);
    add(better, Matter.MOVEMENT, nearer(a.timeStops(), b.timeStops()), TIME_STOPS);
    add(better, Matter.NOISE, b.isoStops() - a.isoStops(), ISO_STOPS);
    add(better, Matter.FRAMING, nearer(a.framing(), b.framing()), FRAMING_DOUBLINGS);
    return better;
  }

  private static void add(List<Matter> better, Matter matter, double gain, double noticed) {
    if (gain >= noticed - ROUNDING) {
      better.add(matter);
    }
  }

  private static double nearer(double one, double other) {
    return Math.abs(other) - Math.abs(one);
  }

  private static double gain(AdaptationPlan one, AdaptationPlan other, Matter matter) {
    return other.cost(matter) - one.cost(matter);
  }

  private static double kg(AdaptationPlan one, AdaptationPlan other, Weights weights) {
    return weights.carryPerKg() == 0 ? 0 : gain(one, other, Matter.CARRYING) / weights.carryPerKg();
  }
}
