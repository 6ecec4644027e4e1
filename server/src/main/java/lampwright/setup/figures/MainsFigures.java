package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.power.Mains;
import lampwright.engine.power.MainsLoad;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.VoltAmperes;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * What the heads on the mains draw, all charging at once. Whether circuits carry it is for their
 * breakers, the makers' instructions and a licensed electrician to say.
 *
 * @param loads of the lights by {@link MainsLoad#MOST_HEADS}, on the same mains; at least one
 * @param lights whose heads hang on the mains
 * @param average at the plan's pace; absent without one, or where a light's power is not known
 * @param assumptions what was taken where the document says nothing, in words
 */
public record MainsFigures(
    List<MainsLoad> loads,
    List<LightId> lights,
    Optional<Average> average,
    List<Said> assumptions) {

  /** Of what chargers draw, the share that reaches the capacitors: common practice, no source. */
  public static final double CHARGING_EFFICIENCY = 0.8;

  /** For a generator over the load: common practice, no source; inverter generators only. */
  public static final double GENERATOR_MARGIN = 1.5;

  /** What to mind. */
  public static final List<Said> CAUTIONS =
      List.of(Said.of("caution.mains.noPermission"), Said.of("caution.mains.outdoors"));

  /**
   * What is drawn in the mean.
   *
   * @param energy of the heads on the mains for one picture
   */
  public record Average(WattSeconds energy, Seconds betweenFrames, Watts power) {}

  public MainsFigures {
    loads = List.copyOf(loads);
    lights = List.copyOf(lights);
    assumptions = List.copyOf(assumptions);
  }

  /** Voltage and power factor. */
  public Mains mains() {
    return loads.getFirst().mains();
  }

  /** What all draw for charging at once. */
  public Watts charging() {
    return new Watts(loads.stream().mapToDouble(load -> load.charging().value()).sum());
  }

  /** What the modelling lamps draw all the time. */
  public Watts modelling() {
    return new Watts(loads.stream().mapToDouble(load -> load.modelling().value()).sum());
  }

  /** Charging and modelling lamps. */
  public Watts total() {
    return charging().plus(modelling());
  }

  /** While all charge. */
  public Amperes current() {
    return mains().current(total());
  }

  /** That carries it with {@link #GENERATOR_MARGIN}. */
  public VoltAmperes generator() {
    return mains().generator(total(), GENERATOR_MARGIN);
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    workings.add(
        together(loads.stream().map(MainsLoad::currentWorking).toList(), current().value()));
    workings.add(
        together(
            loads.stream().map(load -> load.generatorWorking(GENERATOR_MARGIN)).toList(),
            generator().value()));
    average.ifPresent(mean -> workings.add(averageWorking(mean)));
    return workings;
  }

  private static Working together(List<Working> ofLoads, double sum) {
    Working first = ofLoads.getFirst();
    return ofLoads.size() == 1
        ? first
        : new Working(
            first.quantity(), sum, first.unit(), "Σ of the loads", Source.DERIVED, ofLoads);
  }

  private Working averageWorking(Average mean) {
    return Working.of(
        "average power from the mains",
        mean.power().value(),
        "W",
        "E / (T η) + lamps",
        Source.DERIVED,
        Working.given("energy a frame", mean.energy().value(), "W·s", Known.COMPUTED),
        Working.given("from frame to frame", mean.betweenFrames().value(), "s"),
        Working.given("efficiency", CHARGING_EFFICIENCY, "", Known.ESTIMATED),
        Working.given("modelling lamps", modelling().value(), "W"));
  }
}
