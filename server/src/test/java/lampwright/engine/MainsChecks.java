package lampwright.engine;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.Function;
import lampwright.engine.power.Battery;
import lampwright.engine.power.Capacitors;
import lampwright.engine.power.HeatLoad;
import lampwright.engine.power.Mains;
import lampwright.engine.power.MainsHead;
import lampwright.engine.unit.Microfarads;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Volts;
import lampwright.engine.unit.WattHours;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;

/** How each check value on batteries, mains and heat is computed. */
final class MainsChecks {

  private MainsChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry(
              "energy.battery_flashes",
              in ->
                  new Battery(new WattHours(in.number("battery_wh")), in.number("efficiency"))
                      .flashes(new WattSeconds(in.number("flash_w_s")))),
          entry(
              "energy.recharge_watts",
              in ->
                  new MainsHead(
                          "head",
                          new WattSeconds(in.number("flash_w_s")),
                          new Seconds(in.number("recycle_s")),
                          in.number("efficiency"),
                          new Watts(0))
                      .charging()
                      .value()),
          entry(
              "energy.mains_current_a",
              in ->
                  new Mains(new Volts(in.number("volts")), in.number("power_factor"))
                      .current(new Watts(in.number("watts")))
                      .value()),
          entry(
              "energy.generator_va",
              in ->
                  new Mains(new Volts(230), in.number("power_factor"))
                      .generator(new Watts(in.number("watts")), in.number("margin"))
                      .value()),
          entry(
              "energy.average_heat_w",
              in ->
                  new HeatLoad(
                          new WattSeconds(in.number("flash_w_s")),
                          in.number("flashes_per_minute"),
                          new Watts(in.number("modelling_w")))
                      .average()
                      .value()),
          entry(
              "energy.capacitor_j",
              in ->
                  new Capacitors(
                          new Microfarads(in.number("capacitance_uf")),
                          new Volts(in.number("volts")))
                      .stored()
                      .value()));
}
