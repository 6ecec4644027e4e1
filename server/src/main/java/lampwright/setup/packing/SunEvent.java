package lampwright.setup.packing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.SunPhase;
import lampwright.setup.SetupDocument;

/** What the sun does on a day that a crew waits for, morning first; bounds as {@link SunPhase}. */
public enum SunEvent {
  SUNRISE(SunPhase.GOLDEN_SUN_UP, HalfDay.RISING),
  GOLDEN_HOUR_BEGINS(SunPhase.DAY, HalfDay.SETTING),
  SUNSET(SunPhase.GOLDEN_SUN_UP, HalfDay.SETTING),
  GOLDEN_HOUR_ENDS(SunPhase.GOLDEN_SUN_DOWN, HalfDay.SETTING),
  BLUE_HOUR_ENDS(SunPhase.BLUE_HOUR, HalfDay.SETTING);

  private final SunPhase phase;
  private final HalfDay half;

  SunEvent(SunPhase phase, HalfDay half) {
    this.phase = phase;
    this.half = half;
  }

  /** The light of a setup that waits for it. */
  public WantedLight light() {
    return new WantedLight.SunAt(phase, half);
  }

  /**
   * When it is.
   *
   * @param offset of the place's clocks on that day from universal time
   * @return empty where the setup does not say where it is, and on a day without it
   */
  public Optional<Instant> find(SetupDocument setup, LocalDate day, ZoneOffset offset) {
    return light().find(setup, day, offset);
  }
}
