package lampwright.engine.exposure;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.BaseTwo;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * What the camera is set to. Holds for silicon sensors at all practical times; film fails
 * reciprocity beyond about a second and for very short flashes. T-stops and a lens's own losses are
 * left out.
 *
 * @param aperture the f-number
 * @param time how long the shutter is open
 * @param iso the speed
 * @param neutralDensity loss of the filters before the lens in stops, 0 or more; see {@link
 *     NeutralDensity} for what is printed on them
 */
public record ExposureSettings(FNumber aperture, ShutterTime time, Iso iso, Stops neutralDensity) {

  /** Checks that filters only take light. */
  public ExposureSettings {
    Bounds.requireZeroOrMore("Neutral density", neutralDensity.value(), "stops");
  }

  /** Returns settings without a filter. */
  public static ExposureSettings of(FNumber aperture, ShutterTime time, Iso iso) {
    return new ExposureSettings(aperture, time, iso, Stops.ZERO);
  }

  /**
   * Returns the level of scene that these settings suit: {@code log2(N^2/t 100/S)} plus the
   * filters.
   */
  public Ev100 ev100() {
    return new Ev100(
        aperture.toApertureValue()
            + time.toTimeValue()
            - iso.stopsOver(Iso.HUNDRED).value()
            + neutralDensity.value());
  }

  /**
   * Returns the exposure at the subject that these settings render as a middle tone, before the
   * filters: {@code H = C N^2 / S 2^ND}. It is what a flash must give; the time does not enter.
   */
  public LuxSeconds requiredExposure(MeterConstant constant) {
    return aperture.toExposure(iso, constant).plus(neutralDensity);
  }

  /** Returns by how many stops an exposure at the subject is above what these settings ask for. */
  public Stops offsetOf(LuxSeconds exposure, MeterConstant constant) {
    return exposure.stopsOver(requiredExposure(constant));
  }

  /** Returns the aperture that makes these settings suit the level, all else kept. */
  public FNumber apertureFor(Ev100 level) {
    return aperture.closedBy(level.minus(ev100()));
  }

  /** Returns a copy with another aperture. */
  public ExposureSettings withAperture(FNumber other) {
    return new ExposureSettings(other, time, iso, neutralDensity);
  }

  /** Returns a copy with another time. */
  public ExposureSettings withTime(ShutterTime other) {
    return new ExposureSettings(aperture, other, iso, neutralDensity);
  }

  /** Returns a copy with another speed. */
  public ExposureSettings withIso(Iso other) {
    return new ExposureSettings(aperture, time, other, neutralDensity);
  }

  /** Returns a copy with other filters. */
  public ExposureSettings withNeutralDensity(Stops other) {
    return new ExposureSettings(aperture, time, iso, other);
  }

  /** Returns the steps to the level that these settings suit. */
  public Working ev100Working() {
    return Working.of(
        "level that the settings suit",
        ev100().value(),
        "EV100",
        "log2(N² / t · 100 / S) + ND",
        Source.EXPOSURE_VALUE,
        Working.given("aperture", aperture.value(), "f-number"),
        Working.given("time", time.seconds(), "s"),
        Working.given("ISO", iso.value(), ""),
        Working.given("neutral density", neutralDensity.value(), "stops"));
  }

  /** Returns the steps to the exposure that a correctly set light gives. */
  public Working requiredExposureWorking(MeterConstant constant) {
    return Working.of(
        "exposure for these settings",
        requiredExposure(constant).value(),
        "lx·s",
        "C · N² / S · 2^ND",
        Source.ISO_2720,
        Working.given("meter constant", constant.luxSeconds(), "lx·s"),
        Working.given("aperture", aperture.value(), "f-number"),
        Working.given("ISO", iso.value(), ""),
        Working.of(
            "factor of the filters",
            BaseTwo.power(neutralDensity.value()),
            "",
            "2^ND",
            Source.DERIVED,
            Working.given("neutral density", neutralDensity.value(), "stops")));
  }

  @Override
  public String toString() {
    return aperture
        + ", "
        + time
        + ", "
        + iso
        + (neutralDensity.value() == 0 ? "" : ", ND " + neutralDensity);
  }
}
