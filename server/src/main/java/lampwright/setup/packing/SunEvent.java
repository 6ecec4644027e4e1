package lampwright.setup.packing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.SunPhase;
import lampwright.setup.SetupDocument;

/**
 * What the sun does on a day that a crew may wait for; the angles are those of {@link SunPhase}.
 */
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

  /** When something happens. */
  public record Timed(SunEvent event, Instant at) {}

  /** As a light to wait for. */
  public WantedLight light() {
    return new WantedLight.SunAt(phase, half);
  }

  /** Its name in addresses and answers: {@code golden_hour_ends}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Those of a day at a setup's place, in their order; empty where the setup does not say where it
   * was.
   *
   * @param offset of the place's clocks on that day from universal time
   */
  public static List<Timed> of(SetupDocument setup, LocalDate day, ZoneOffset offset) {
    return Arrays.stream(values())
        .flatMap(
            event ->
                event.light().find(setup, day, offset).map(at -> new Timed(event, at)).stream())
        .toList();
  }
}
