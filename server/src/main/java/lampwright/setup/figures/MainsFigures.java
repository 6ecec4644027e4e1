package lampwright.setup.figures;

import java.util.List;
import lampwright.engine.Working;
import lampwright.engine.power.MainsLoad;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.VoltAmperes;
import lampwright.engine.unit.Watts;
import lampwright.setup.LightId;

/**
 * What the heads on the mains draw, all on one circuit and all charging at once. Whether a circuit
 * carries it is for its breaker, the makers' instructions and a licensed electrician to say.
 *
 * @param lights whose heads hang on the mains
 * @param assumptions what was taken where the document says nothing, in words
 */
public record MainsFigures(MainsLoad load, List<LightId> lights, List<String> assumptions) {

  /** Of what chargers draw, the share that reaches the capacitors: common practice, no source. */
  public static final double CHARGING_EFFICIENCY = 0.8;

  /** For a generator over the load: common practice, no source; inverter generators only. */
  public static final double GENERATOR_MARGIN = 1.5;

  /** What to mind. */
  public static final List<String> CAUTIONS =
      List.of(
          "No permission to plug in: local codes, the makers' instructions and licensed practice"
              + " come first. The current at switching on is several times this.",
          "Outdoors and near water only through a residual-current device, with gear that is made"
              + " for it.");

  public MainsFigures {
    lights = List.copyOf(lights);
    assumptions = List.copyOf(assumptions);
  }

  /** Charging and modelling lamps. */
  public Watts total() {
    return load.total();
  }

  /** While all charge. */
  public Amperes current() {
    return load.current();
  }

  /** That carries it with {@link #GENERATOR_MARGIN}. */
  public VoltAmperes generator() {
    return load.generator(GENERATOR_MARGIN);
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    return List.of(load.currentWorking(), load.generatorWorking(GENERATOR_MARGIN));
  }
}
