package lampwright.gear.calibration;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * Whether a head's dial keeps its steps.
 *
 * @param head its name
 * @param slope what a stop of the dial really gives: a stop where the dial is true
 * @param uncertainty of the slope
 * @param worst how far the dial is off at the lowest power that was read, plus where the head gives
 *     more than its dial says
 * @param even whether the readings leave the dial without blame
 */
public record DialCheck(
    String head, Stops slope, Uncertainty uncertainty, Stops worst, boolean even) {

  /** How many powers must have been read; two make a line whatever they are. */
  static final int FEWEST_POWERS = 3;

  /** Stops a stop beyond which the readings tell of no dial, but of other slips. */
  static final double WILDEST_EXCESS = 5;

  /** What is less than a tenth of a stop no meter shows. */
  private static final double SHOWN_STOPS = 0.1;

  static DialCheck of(String head, RobustFit.Estimate excess, Stops lowestPower) {
    double off = excess.value().value();
    Stops worst = new Stops(-off * lowestPower.value());
    boolean certain = Math.abs(off) > excess.uncertainty().within95().value();
    return new DialCheck(
        head,
        new Stops(1 + off),
        excess.uncertainty(),
        worst,
        !certain || worst.abs().value() < SHOWN_STOPS);
  }

  /** Returns it in a sentence. */
  public String sentence() {
    String measured =
        Bounds.fixed(slope.value(), 2)
            + " ± "
            + Bounds.fixed(uncertainty.standardError().value(), 2)
            + " stop a stop";
    return even
        ? "The dial of " + head + " keeps its steps: " + measured + "."
        : "The dial of "
            + head
            + " does not keep its steps: "
            + measured
            + ", "
            + worst.toSignedText()
            + " at the lowest power read. Meter it at the power you use.";
  }
}
