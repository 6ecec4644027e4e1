package lampwright.engine;

import static java.util.Map.entry;

import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.NeutralDensity;
import lampwright.engine.exposure.ReflectedConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;

/** How each check value on exposure, marks and meters is computed with the engine's types. */
final class ExposureChecks {

  private ExposureChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("apex.ev", in -> in.settings().ev100().value()),
          entry("apex.ev100", in -> in.settings().ev100().value()),
          entry("apex.av", in -> in.fNumber("f_number").toApertureValue()),
          entry("apex.tv", in -> new ShutterTime(in.number("shutter_s")).toTimeValue()),
          entry("apex.fnumber_for_ev100", ExposureChecks::apertureFor),
          entry("marks.exact", in -> mark(in).exact()),
          entry("marks.nearest", in -> scale(in).nearest(in.number("value")).mark().text()),
          entry("marks.error_stops", in -> scale(in).printedError(mark(in)).value()),
          entry("meter.luminance_for_settings", in -> k(in).luminance(in.settings()).value()),
          entry("meter.luminance_from_ev100", in -> k(in).luminance(ev100(in)).value()),
          entry("meter.lux_from_ev100", in -> ev100(in).toLux(in.constant()).value()),
          entry(
              "meter.illuminance_for_settings",
              in -> in.settings().ev100().toLux(in.constant()).value()),
          entry("meter.c_from_settings", ExposureChecks::impliedConstant),
          entry("meter.ev100_from_lux", in -> Ev100.ofLux(lux(in), in.constant()).value()),
          entry("meter.implied_reflectance", in -> k(in).impliedReflectance(in.constant())),
          entry(
              "meter.c_ratio_stops",
              in ->
                  new MeterConstant(in.number("c_a_lux_s"))
                      .stopsOver(new MeterConstant(in.number("c_b_lux_s")))
                      .value()),
          entry(
              "meter.h_for_fnumber",
              in -> in.fNumber("f_number").toExposure(in.iso(), in.constant()).value()),
          entry(
              "meter.fnumber_from_h",
              in ->
                  FNumber.ofExposure(
                          new LuxSeconds(in.number("exposure_lx_s")), in.iso(), in.constant())
                      .value()),
          entry(
              "combine.ambient_offset_stops",
              in ->
                  new Ambient(new Ev100(in.number("ambient_ev100"))).offset(in.settings()).value()),
          entry(
              "combine.shutter_ratio_stops",
              in ->
                  new ShutterTime(in.number("shutter_to_s"))
                      .stopsOver(new ShutterTime(in.number("shutter_from_s")))
                      .value()),
          entry(
              "combine.nd_stops",
              in -> NeutralDensity.ofOpticalDensity(in.number("optical_density")).value()),
          entry(
              "combine.nd_factor_stops",
              in -> NeutralDensity.ofFilterFactor(in.number("filter_factor")).value()),
          entry(
              "combine.fnumber_quadrature",
              in ->
                  FNumber.ofTogether(in.numbers("f_numbers").stream().map(FNumber::new).toList())
                      .value()),
          entry("combine.sum_stops", ExposureChecks::sum),
          entry("power.sum_stops", ExposureChecks::sum),
          entry("tolerance.percent", in -> in.stops("stops").toPercent()));

  private static Object apertureFor(CheckInputs in) {
    return ExposureSettings.of(new FNumber(1), new ShutterTime(in.number("shutter_s")), in.iso())
        .apertureFor(ev100(in))
        .value();
  }

  /** The rule's constant: the one with which the level equals the settings. */
  private static Object impliedConstant(CheckInputs in) {
    Stops beyond = Ev100.ofLux(lux(in), MeterConstant.FLAT).minus(in.settings().ev100());
    return MeterConstant.FLAT.luxSeconds() * beyond.toFactor();
  }

  private static Object sum(CheckInputs in) {
    return Stops.sumOfLight(in.numbers("stops").stream().map(Stops::new).toList()).value();
  }

  private static MarkedScale scale(CheckInputs in) {
    return MarkedScale.valueOf(in.text("series").toUpperCase(Locale.ROOT));
  }

  private static MarkedScale.Mark mark(CheckInputs in) {
    return scale(in).findMark(in.text("mark")).orElseThrow();
  }

  private static ReflectedConstant k(CheckInputs in) {
    return new ReflectedConstant(in.number("k_cd_s_per_m2"));
  }

  private static Ev100 ev100(CheckInputs in) {
    return new Ev100(in.number("ev100"));
  }

  private static Lux lux(CheckInputs in) {
    return new Lux(in.number("illuminance_lx"));
  }
}
