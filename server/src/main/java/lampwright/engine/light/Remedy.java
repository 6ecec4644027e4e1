package lampwright.engine.light;

import java.util.Optional;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What brings a light back to the level that was expected of it: another distance by its face's
 * real fall-off, or another step of its dial. Each is absent where it is not possible.
 *
 * @param distance in steps of 5 cm, which is as near as a stand is moved
 * @param stopsDown the power, on the dial's steps
 */
public record Remedy(Optional<Metres> distance, Optional<Stops> stopsDown) {

  /** Nearer than this a light is not moved to a face: a judgement. */
  private static final double NEAREST_M = 0.3;

  /** A division by 20 gives 1.4 where 28 times 0.05 gives a little more. */
  private static final double STEPS_A_METRE = 20;

  /** A dial that comes this near, in its steps, to what is wanted reaches it. */
  private static final double WITHIN_STEPS = 0.5 + 1e-9;

  /**
   * The dial of a head.
   *
   * @param stopsDown where it stands, below full power
   * @param range from full to least power
   * @param step its smallest step, above 0
   */
  public record DialNow(Stops stopsDown, Stops range, Stops step) {

    /** Checks the step. */
    public DialNow {
      Bounds.requirePositive("Step", step.value(), "stops");
    }
  }

  /**
   * Returns what takes a deviation away.
   *
   * @param over by how much the light is above what was expected; negative where it is under
   * @param from the present distance, above 0
   * @param dial absent where the power is not known
   */
  public static Remedy of(Stops over, EmittingFace face, Metres from, Optional<DialNow> dial) {
    return new Remedy(
        FallOff.distanceForGain(face, from, over.negated())
            .map(to -> new Metres(Math.floor(to.value() * STEPS_A_METRE + 0.5) / STEPS_A_METRE))
            .filter(to -> to.value() >= NEAREST_M)
            .filter(to -> Math.abs(to.value() - from.value()) >= 0.5 / STEPS_A_METRE),
        dial.flatMap(now -> power(over, now)));
  }

  private static Optional<Stops> power(Stops over, DialNow now) {
    double wanted = now.stopsDown().value() + over.value();
    double step = now.step().value();
    double most = Math.floor(now.range().value() / step + 1e-9);
    double steps = Math.max(0, Math.min(most, Math.floor(wanted / step + 0.5)));
    boolean reaches = Math.abs(steps - wanted / step) <= WITHIN_STEPS;
    boolean turns = Math.abs(steps * step - now.stopsDown().value()) >= step / 2;
    return reaches && turns ? Optional.of(new Stops(steps * step)) : Optional.empty();
  }
}
