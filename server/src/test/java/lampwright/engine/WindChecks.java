package lampwright.engine;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.Function;
import lampwright.engine.power.Beaufort;
import lampwright.engine.power.Legs;
import lampwright.engine.power.StandInWind;
import lampwright.engine.power.Wind;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Newtons;
import lampwright.engine.unit.SquareMetres;

/** How each check value on stands in the wind is computed. */
final class WindChecks {

  private WindChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry(
              "wind.drag_n",
              in ->
                  new StandInWind(
                          new SquareMetres(in.number("area_m2")),
                          in.number("drag_coefficient"),
                          new Metres(2),
                          new Legs(3, new Metres(0.5)),
                          new Kilograms(8))
                      .force(
                          new Wind(
                              new MetresPerSecond(in.number("wind_m_s")),
                              1,
                              in.number("air_kg_m3")))
                      .value()),
          entry(
              "wind.moment_nm",
              in -> new Newtons(in.number("force_n")).onArm(in.metres("height_m")).value()),
          entry(
              "wind.tip_radius_m",
              in ->
                  new Legs((int) in.number("legs"), in.metres("leg_radius_m"))
                      .tippingRadius()
                      .value()),
          entry(
              "wind.mass_needed_kg",
              in ->
                  legs(in)
                      .massAgainst(
                          new Newtons(in.number("force_n")).onArm(in.metres("height_m")),
                          in.number("safety_factor"))
                      .value()),
          entry(
              "wind.tip_speed_m_s",
              in ->
                  new StandInWind(
                          new SquareMetres(in.number("area_m2")),
                          in.number("drag_coefficient"),
                          in.metres("height_m"),
                          legs(in),
                          new Kilograms(in.number("mass_kg")))
                      .speedHeld(
                          new Wind(new MetresPerSecond(0), 1, in.number("air_kg_m3")),
                          in.number("safety_factor"))
                      .value()),
          entry(
              "wind.beaufort_speed_m_s",
              in -> Beaufort.ofNumber((int) in.number("beaufort")).typical().value()),
          entry(
              "wind.beaufort_number",
              in -> (double) Beaufort.of(new MetresPerSecond(in.number("wind_m_s"))).number()));

  /** Three legs, whose tipping radius is half their circle. */
  private static Legs legs(CheckInputs in) {
    return new Legs(3, in.metres("tip_radius_m").times(2));
  }
}
