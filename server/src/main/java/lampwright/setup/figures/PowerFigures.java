package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.setup.Light;
import lampwright.setup.LightId;

/**
 * What the pictures cost in energy and time.
 *
 * @param lights whose power is known, in the document's order
 * @param energyPerFrame of all heads; absent where a light's power is not known
 * @param pace the slowest light's; absent where a light's time to recycle is not known
 * @param charge the first battery to be empty; absent without batteries, or where one is not known
 * @param mains what the heads on the mains draw; absent without any, or where one is not known
 * @param heat of the head that gets hottest; absent where no pace is known
 * @param wish how the plan fares; absent without a plan
 */
public record PowerFigures(
    List<LightPower> lights,
    Optional<WattSeconds> energyPerFrame,
    Optional<Pace> pace,
    Optional<Charge> charge,
    Optional<MainsFigures> mains,
    Optional<HeatFigures> heat,
    Optional<Wish> wish) {

  /**
   * One light.
   *
   * @param energy for one picture, all heads and pops
   * @param recycle from a picture to ready; absent where it is not known
   * @param framesPerCharge an upper bound: cold, age and stand-by take their share; absent for the
   *     mains and where it is not known
   */
  public record LightPower(
      Light light,
      WattSeconds energy,
      Optional<Seconds> recycle,
      Optional<Double> framesPerCharge) {}

  /** The slowest light sets the pace. */
  public record Pace(LightId slowest, Seconds betweenFrames) {

    /** Frames in a second. */
    public double framesPerSecond() {
      return 1 / betweenFrames.value();
    }
  }

  /**
   * The battery that is empty first.
   *
   * @param frames an upper bound
   */
  public record Charge(LightId first, double frames) {}

  /**
   * How the plan fares.
   *
   * @param keepsPace whether every light is ready again in time; absent where no pace is wished or
   *     known
   * @param charges how many charges of the first empty battery the frames need; absent where none
   *     are wished or known
   */
  public record Wish(
      Optional<Seconds> betweenFrames,
      Optional<Integer> frames,
      Optional<Boolean> keepsPace,
      Optional<Integer> charges) {}

  public PowerFigures {
    lights = List.copyOf(lights);
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    energyPerFrame.ifPresent(
        energy ->
            workings.add(
                new Working(
                    "energy a frame",
                    energy.value(),
                    "W·s",
                    "Σ heads · pops · P · 2^−s",
                    Source.DERIVED,
                    lights.stream()
                        .map(
                            l ->
                                Working.given(
                                    l.light().id().text(),
                                    l.energy().value(),
                                    "W·s",
                                    Known.COMPUTED))
                        .toList())));
    pace.ifPresent(
        slowest ->
            workings.add(
                Working.of(
                    "from frame to frame, by the " + slowest.slowest().text(),
                    slowest.betweenFrames().value(),
                    "s",
                    "pops · T · 2^−s",
                    Source.TRADE_PRACTICE,
                    parts(slowest.slowest(), "time to recycle at full power", "s"))));
    charge.ifPresent(
        empty ->
            workings.add(
                Working.of(
                    "frames to a charge, by the " + empty.first().text(),
                    empty.frames(),
                    "",
                    "n · 2^s / pops",
                    Source.TRADE_PRACTICE,
                    parts(empty.first(), "flashes to a charge at full power", ""))));
    mains.ifPresent(m -> workings.addAll(m.workings()));
    heat.ifPresent(h -> workings.add(h.load().averageWorking()));
    return workings;
  }

  private Working[] parts(LightId id, String atFull, String unit) {
    Light light =
        lights.stream()
            .map(LightPower::light)
            .filter(each -> each.id().equals(id))
            .findFirst()
            .orElseThrow();
    double full =
        unit.isEmpty()
            ? light.head().flashesPerCharge().orElse(0)
            : light.head().recycle().map(Seconds::value).orElse(0.0);
    return new Working[] {
      Working.given(atFull, full, unit),
      Working.given("power below full", light.stopsDown().orElse(Stops.ZERO).value(), "stops"),
      Working.given("pops", light.pops(), "")
    };
  }
}
