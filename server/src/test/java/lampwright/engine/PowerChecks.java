package lampwright.engine;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lampwright.engine.power.FlashBudget;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.HeadCount;
import lampwright.engine.power.PowerScale;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/** How each check value on power, flash duration and recycling is computed. */
final class PowerChecks {

  private PowerChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("power.fraction", in -> in.stops("stops_down").negated().toFactor()),
          entry(
              "power.stops_from_fraction",
              in ->
                  PowerScale.FRACTIONS
                      .toStopsDown(in.number("fraction"), new WattSeconds(400))
                      .value()),
          entry(
              "power.energy",
              in -> new WattSeconds(in.number("full_w_s")).down(in.stops("stops_down")).value()),
          entry("power.scale_to_energy", PowerChecks::scaleToEnergy),
          entry(
              "power.equal_heads_stops", in -> HeadCount.stopsOf((int) in.number("heads")).value()),
          entry(
              "power.pops_needed", in -> (double) HeadCount.neededFor(in.stops("shortfall_stops"))),
          entry("power.volt_ratio", in -> FlashPulse.Voltage.voltageShare(in.stops("stops_down"))),
          entry("flash.t01_from_t05", in -> FlashPulse.tenthTimeOf(in.seconds("t05_s")).value()),
          entry("flash.tau", in -> new FlashPulse.Cut(in.seconds("t05_s")).decayConstant().value()),
          entry(
              "flash.captured",
              in -> FlashPulse.capturedShare(in.seconds("window_s"), in.seconds("t05_s"))),
          entry(
              "flash.clip_loss_stops",
              in ->
                  ShutterLoss.leaf(
                          new FlashPulse.Cut(in.seconds("t05_s")),
                          Stops.ZERO,
                          in.seconds("window_s"))
                      .value()),
          entry("flash.cut_time", in -> cut(in).cutTimeS(in.stops("stops_down"))),
          entry(
              "flash.equivalent_duration",
              in -> cut(in).equivalentDuration(in.stops("stops_down")).value()),
          entry("flash.cut_t05", in -> cut(in).halfTime(in.stops("stops_down")).value()),
          entry("flash.cut_t01", in -> cut(in).tenthTime(in.stops("stops_down")).value()),
          entry(
              "flash.hss_loss_stops",
              in ->
                  ShutterLoss.longBurst(
                          in.seconds("shutter_s"),
                          in.seconds("traverse_s"),
                          in.number("burst_efficiency"))
                      .value()),
          entry(
              "flash.lit_fraction",
              in -> ShutterLoss.litShare(in.seconds("shutter_s"), in.seconds("traverse_s"))),
          entry(
              "flash.sync_edge_loss_stops",
              in ->
                  ShutterLoss.syncEdge(
                          cut(in),
                          in.stops("stops_down"),
                          in.seconds("shutter_s"),
                          in.seconds("traverse_s"))
                      .orElseThrow()
                      .value()),
          entry(
              "energy.flashes_scaled",
              in -> budget(in).flashesPerChargeAt(in.stops("stops_down")).orElseThrow()),
          entry("energy.recycle_s", in -> budget(in).recycleAt(in.stops("stops_down")).value()),
          entry("energy.max_rate_hz", in -> budget(in).framesPerSecondAt(in.stops("stops_down"))));

  private static FlashPulse.Cut cut(CheckInputs in) {
    return new FlashPulse.Cut(in.seconds("t05_full_s"));
  }

  private static FlashBudget budget(CheckInputs in) {
    return new FlashBudget(
        new WattSeconds(500),
        new Seconds(in.number("full_recycle_s", 1)),
        new Seconds(in.number("floor_s", 0)),
        Optional.of(in.number("full_power_flashes", 1)));
  }

  private static Object scaleToEnergy(CheckInputs in) {
    WattSeconds full = new WattSeconds(in.number("full_w_s"));
    double shown = in.number("scale_value") - in.number("scale_full") + PowerScale.TOP_UNIT;
    return full.down(PowerScale.ONE_STOP_UNITS.toStopsDown(shown, full)).value();
  }
}
