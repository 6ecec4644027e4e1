package lampwright.engine.exposure;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/**
 * The light that is not the heads', as an incident meter at the target reads it.
 *
 * <p>With normal flash and a shutter no faster than sync, flash over ambient is {@code H / (E t)}:
 * it holds neither aperture, nor ISO, nor filter. Only time, flash and the ambient itself change
 * it.
 *
 * @param level its level at ISO 100
 */
public record Ambient(Ev100 level) {

  /** Returns ambient light of a metered level. */
  public static Ambient of(Ev100 level) {
    return new Ambient(level);
  }

  /** Returns ambient light of an illuminance above 0. */
  public static Ambient ofLux(Lux light, MeterConstant constant) {
    return new Ambient(Ev100.ofLux(light, constant));
  }

  /** Returns its illuminance. */
  public Lux toLux(MeterConstant constant) {
    return level.toLux(constant);
  }

  /** Returns what it gives while the shutter is open, {@code H = E t}. */
  public LuxSeconds exposure(ShutterTime time, MeterConstant constant) {
    return toLux(constant).over(time.toSeconds());
  }

  /**
   * Returns the ambient offset: ambient EV100 less the EV100 of the settings. -1 is "one stop
   * under".
   */
  public Stops offset(ExposureSettings settings) {
    return level.minus(settings.ev100());
  }

  /** Returns the steps to the ambient offset. */
  public Working offsetWorking(ExposureSettings settings) {
    return Working.of(
        "ambient offset",
        offset(settings).value(),
        "stops",
        "EV100 of the ambient − EV100 of the settings",
        Source.EXPOSURE_VALUE,
        Working.given("ambient", level.value(), "EV100"),
        settings.ev100Working());
  }

  /** Returns the steps to the ambient's exposure. */
  public Working exposureWorking(ShutterTime time, MeterConstant constant) {
    return Working.of(
        "exposure by the ambient",
        exposure(time, constant).value(),
        "lx·s",
        "E · t",
        Source.ISO_2720,
        Working.of(
            "illuminance",
            toLux(constant).value(),
            "lx",
            "C · 2^EV100 / 100",
            Source.ISO_2720,
            Working.given("meter constant", constant.luxSeconds(), "lx·s"),
            Working.given("ambient", level.value(), "EV100")),
        Working.given("time", time.seconds(), "s"));
  }

  @Override
  public String toString() {
    return "ambient " + level;
  }
}
