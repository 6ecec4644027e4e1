package lampwright.learning.drill;

import lampwright.engine.unit.BaseTwo;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * What a number that is asked for measures, and how near to the right one counts as right. A third
 * of a stop is seen side by side, a tenth is what meters repeat to: common practice, no source.
 */
public enum Measure {
  /** A difference in stops that a hand sets or a meter reads: a third of a stop. */
  STOPS_SET(false, 1.0 / 3, -12, 12),
  /** A difference in stops that is only counted: half of a third. */
  STOPS_COUNTED(false, 1.0 / 6, -20, 20),
  /** A distance of a light: what changes the light by a third of a stop. */
  LIGHT_DISTANCE_M(true, 1.0 / 6, 0.1, 50),
  /** A length on the ground: a tenth of it, as one paces it. */
  GROUND_LENGTH_M(true, BaseTwo.log(1.1), 0.05, 1000),
  /** How far something moves: a tenth of it. */
  MOVED_MM(true, BaseTwo.log(1.1), 0.01, 100_000),
  /** Frames: a tenth of them, as batteries age. */
  FRAMES(true, BaseTwo.log(1.1), 1, 1_000_000),
  /** A shift of colour: the least that is seen. */
  SHIFT_MIRED(false, 10, -1000, 1000);

  /** Rounding of doubles, and of a number that is shown with two decimals. */
  private static final double ROUNDING = 0.005;

  private final boolean byFactor;
  private final double tolerance;
  private final double lowest;
  private final double highest;

  Measure(boolean byFactor, double tolerance, double lowest, double highest) {
    this.byFactor = byFactor;
    this.tolerance = tolerance;
    this.lowest = lowest;
    this.highest = highest;
  }

  /** The least that anybody could mean. */
  public double lowest() {
    return lowest;
  }

  /** The most that anybody could mean. */
  public double highest() {
    return highest;
  }

  /** Asks whether an answer is as good as the right one. */
  public boolean isNear(double right, double answer) {
    return off(right, answer) <= tolerance + ROUNDING;
  }

  /** By how much, in its own unit or, where a factor counts, in doublings. */
  double off(double one, double other) {
    if (!byFactor) {
      return Math.abs(one - other);
    }
    return one > 0 && other > 0 ? Math.abs(BaseTwo.log(other / one)) : Double.POSITIVE_INFINITY;
  }

  /** The number with its unit, as an answer is read. */
  public Said inWords(double value) {
    return switch (this) {
      case STOPS_SET, STOPS_COUNTED ->
          Said.of("drilling.value.stops", new Filling.SignedBriefly(value));
      case LIGHT_DISTANCE_M, GROUND_LENGTH_M ->
          Said.of("drilling.value.length", new Filling.Length(value, 1));
      case MOVED_MM -> Said.of("drilling.value.mm", number(value));
      case FRAMES -> Said.of("drilling.value.frames", number(value));
      case SHIFT_MIRED -> Said.of("drilling.value.mired", new Filling.Rounded(value, 0));
    };
  }

  private static Filling number(double value) {
    return new Filling.Rounded(value, value < 10 ? 1 : 0);
  }
}
