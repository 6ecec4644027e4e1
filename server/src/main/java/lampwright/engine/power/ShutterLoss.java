package lampwright.engine.power;

import java.util.Optional;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;

/**
 * What a shutter takes from a flash. Leaf shutters sync at every speed and clip the tail of the
 * whole frame; focal-plane shutters show each row in turn (sources flash-makers-notes, derived). A
 * leaf's own efficiency at wide apertures, some tenths of a stop, is left out.
 */
public final class ShutterLoss {

  private ShutterLoss() {}

  /**
   * Returns the loss of the whole frame in a leaf shutter.
   *
   * @param open how long the shutter is open, above 0
   */
  public static Stops leaf(FlashPulse pulse, Stops stopsDown, Seconds open) {
    return pulse.lossIn(open, stopsDown);
  }

  /**
   * Returns the loss at the rows that a focal-plane shutter exposes first, where the flash fires as
   * the last rows open: those see it only for the open time less the curtain's traverse. Even at
   * the marked sync speed a slow flash is cut there. Empty where the time is no longer than the
   * traverse: then part of the frame gets no flash at all ({@link #litShare}).
   *
   * @param open exposure time of a row, above 0
   * @param traverse time the curtain takes over the frame
   */
  public static Optional<Stops> syncEdge(
      FlashPulse pulse, Stops stopsDown, Seconds open, Seconds traverse) {
    double window = open.value() - traverse.value();
    return window <= 0
        ? Optional.empty()
        : Optional.of(pulse.lossIn(new Seconds(window), stopsDown));
  }

  /**
   * Returns the share of the frame that a short flash lights, {@code min(1, t/Tx)}.
   *
   * @param traverse time the curtain takes over the frame, above 0
   */
  public static double litShare(Seconds open, Seconds traverse) {
    Bounds.requirePositive("Traverse", traverse.value(), "s");
    return Math.min(1, open.value() / traverse.value());
  }

  /**
   * Returns the loss of a long burst (high-speed sync) against the whole flash, {@code -log2(eta t
   * / (t + Tx))}: idealised, real heads vary, a measured loss is better. Much faster than sync each
   * stop of shutter costs a stop of flash, so the balance with the ambient no longer improves; blur
   * then follows the shutter and not the flash.
   *
   * @param open exposure time of a row, above 0
   * @param traverse time the curtain takes over the frame
   * @param efficiency eta of the flat burst, above 0 up to 1; 0.5 to 1 in practice
   */
  public static Stops longBurst(Seconds open, Seconds traverse, double efficiency) {
    Bounds.requirePositive("Time", open.value(), "s");
    Bounds.requirePositive("Efficiency of the burst", efficiency, "");
    Bounds.requireBetween("Efficiency of the burst", efficiency, "", 0, 1);
    double share = efficiency * open.value() / (open.value() + traverse.value());
    return Stops.ofRatio(share).negated();
  }
}
