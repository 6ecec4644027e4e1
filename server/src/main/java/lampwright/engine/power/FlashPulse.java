package lampwright.engine.power;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;

/**
 * How long a flash lasts, from its t0.5 at full power and how the head is controlled. A pulse is
 * taken as a sudden rise and an exponential decay of time constant tau (sources flash-makers-notes,
 * iso-2827, derived); real pulses differ, so a maker's or a measured t0.1 is better where known.
 *
 * <p>For movement use t0.1, or {@link #equivalentDuration}; t0.5 understates blur about threefold.
 */
public sealed interface FlashPulse {

  /** Returns t0.5 at full power. */
  Seconds fullHalfTime();

  /** Returns t0.5, the time above half of the peak, so many stops down. */
  Seconds halfTime(Stops stopsDown);

  /** Returns t0.1, the time above a tenth of the peak, so many stops down. */
  Seconds tenthTime(Stops stopsDown);

  /** Returns the energy-weighted duration {@code (∫I)² / ∫I²} so many stops down. */
  Seconds equivalentDuration(Stops stopsDown);

  /**
   * Returns the loss of a pulse that starts with a window and is shut off at its end, 0 or more.
   *
   * @param window how long light can reach the sensor, above 0
   */
  Stops lossIn(Seconds window, Stops stopsDown);

  /** Returns the time constant of the decay, {@code t0.5 / ln 2}. */
  default Seconds decayConstant() {
    return new Seconds(fullHalfTime().value() / Decay.LN_2);
  }

  /** Returns t0.1 of an uncut exponential pulse, {@code log2(10) t0.5 = 3.32 t0.5}. */
  static Seconds tenthTimeOf(Seconds halfTime) {
    return halfTime.times(Decay.LN_10 / Decay.LN_2);
  }

  /** Returns the share of an uncut exponential pulse that falls into a window from its start. */
  static double capturedShare(Seconds window, Seconds halfTime) {
    Bounds.requirePositive("t0.5", halfTime.value(), "s");
    return Decay.energyWithin(window.value(), halfTime.value() / Decay.LN_2);
  }

  /**
   * Cut off (IGBT): shorter at lower power, and slightly bluer, because the warm tail is missing.
   *
   * @param fullHalfTime t0.5 at full power, above 0
   */
  record Cut(Seconds fullHalfTime) implements FlashPulse {

    /** Checks the bound. */
    public Cut {
      Bounds.requirePositive("t0.5", fullHalfTime.value(), "s");
    }

    /**
     * Returns when the pulse is cut, {@code -tau ln(1 - 2^-s)}: never at full power, where it is
     * infinite.
     */
    public double cutTimeS(Stops stopsDown) {
      double share = shareOf(stopsDown);
      return share == 1
          ? Double.POSITIVE_INFINITY
          : -decayConstant().value() * StrictMath.log(1 - share);
    }

    @Override
    public Seconds halfTime(Stops stopsDown) {
      return new Seconds(Math.min(cutTimeS(stopsDown), fullHalfTime.value()));
    }

    @Override
    public Seconds tenthTime(Stops stopsDown) {
      return new Seconds(
          Math.min(cutTimeS(stopsDown), FlashPulse.tenthTimeOf(fullHalfTime).value()));
    }

    @Override
    public Seconds equivalentDuration(Stops stopsDown) {
      double share = shareOf(stopsDown);
      return decayConstant().times(2 * share / (2 - share));
    }

    @Override
    public Stops lossIn(Seconds window, Stops stopsDown) {
      Bounds.requirePositive("Window", window.value(), "s");
      if (cutTimeS(stopsDown) <= window.value()) {
        return Stops.ZERO;
      }
      double within = Decay.energyWithin(window.value(), decayConstant().value());
      return Stops.ofRatio(Math.max(1, shareOf(stopsDown) / within));
    }

    private static double shareOf(Stops stopsDown) {
      Bounds.requireZeroOrMore("Power below full", stopsDown.value(), "stops");
      return stopsDown.negated().toFactor();
    }
  }

  /**
   * Controlled by voltage: longer and warmer at lower power, by how much only a measured table
   * knows. Without one t0.5 is kept as at full power, which is a lower bound: say so where it is
   * shown.
   *
   * @param fullHalfTime t0.5 at full power, above 0
   */
  record Voltage(Seconds fullHalfTime) implements FlashPulse {

    /** Checks the bound. */
    public Voltage {
      Bounds.requirePositive("t0.5", fullHalfTime.value(), "s");
    }

    /** Returns the capacitor's voltage as a share of full, {@code 2^(-s/2)}. */
    public static double voltageShare(Stops stopsDown) {
      return stopsDown.times(-0.5).toFactor();
    }

    @Override
    public Seconds halfTime(Stops stopsDown) {
      return fullHalfTime;
    }

    @Override
    public Seconds tenthTime(Stops stopsDown) {
      return FlashPulse.tenthTimeOf(fullHalfTime);
    }

    @Override
    public Seconds equivalentDuration(Stops stopsDown) {
      return decayConstant().times(2);
    }

    @Override
    public Stops lossIn(Seconds window, Stops stopsDown) {
      Bounds.requirePositive("Window", window.value(), "s");
      return Stops.ofRatio(1 / Decay.energyWithin(window.value(), decayConstant().value()));
    }
  }
}
