package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.power.FlashBudget;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/** Computes what the pictures cost in energy and time. */
final class PowerComputation {

  private static final Seconds NO_FLOOR = new Seconds(0);

  /** Rounding of doubles, as a share. */
  private static final double ROUNDING = 1e-9;

  private PowerComputation() {}

  static PowerFigures of(SetupDocument setup, Set<String> needs) {
    List<PowerFigures.LightPower> lights = new ArrayList<>();
    Optional<PowerFigures.Pace> pace = Optional.empty();
    Optional<PowerFigures.Charge> charge = Optional.empty();
    boolean allEnergies = true;
    boolean allRecycles = true;
    boolean allCharges = true;
    double energy = 0;
    for (int i = 0; i < setup.lights().size(); i++) {
      Light light = setup.lights().get(i);
      boolean battery = light.head().feed() == Head.Feed.BATTERY;
      addNeeds(light, "/lights/" + i + "/head", needs);
      allRecycles &= light.head().recycle().isPresent();
      allCharges &= !battery || light.head().flashesPerCharge().isPresent();
      if (light.stopsDown().isEmpty()) {
        allEnergies = false;
        continue;
      }
      PowerFigures.LightPower power = power(light, light.stopsDown().get());
      lights.add(power);
      energy += power.energy().value();
      pace = slower(pace, power);
      charge = sooner(charge, power);
    }
    if (!allEnergies || !allRecycles) {
      pace = Optional.empty();
    }
    if (!allEnergies || !allCharges) {
      charge = Optional.empty();
    }
    return new PowerFigures(
        lights,
        allEnergies ? Optional.of(new WattSeconds(energy)) : Optional.empty(),
        pace,
        charge,
        MainsComputation.mains(setup),
        MainsComputation.heat(setup, pace),
        wish(setup.plan(), pace, charge));
  }

  private static void addNeeds(Light light, String head, Set<String> needs) {
    if (light.head().recycle().isEmpty()) {
      needs.add(head + "/recycle_s");
    }
    if (light.head().feed() == Head.Feed.BATTERY && light.head().flashesPerCharge().isEmpty()) {
      needs.add(head + "/flashes_per_charge");
    }
  }

  private static PowerFigures.LightPower power(Light light, Stops down) {
    Head head = light.head();
    FlashBudget budget =
        new FlashBudget(
            head.energy(),
            head.recycle().orElse(NO_FLOOR),
            NO_FLOOR,
            head.feed() == Head.Feed.MAINS
                ? Optional.empty()
                : head.flashesPerCharge().map(Integer::doubleValue));
    double flashes = (double) light.heads() * light.pops();
    return new PowerFigures.LightPower(
        light,
        new WattSeconds(budget.energyAt(down).value() * flashes),
        head.recycle().map(full -> budget.recycleAt(down).times(light.pops())),
        budget.flashesPerChargeAt(down).map(count -> count / light.pops()));
  }

  private static Optional<PowerFigures.Pace> slower(
      Optional<PowerFigures.Pace> slowest, PowerFigures.LightPower power) {
    if (power.recycle().isEmpty()
        || slowest
            .filter(s -> s.betweenFrames().compareTo(power.recycle().get()) >= 0)
            .isPresent()) {
      return slowest;
    }
    return Optional.of(new PowerFigures.Pace(power.light().id(), power.recycle().get()));
  }

  private static Optional<PowerFigures.Charge> sooner(
      Optional<PowerFigures.Charge> first, PowerFigures.LightPower power) {
    if (power.framesPerCharge().isEmpty()
        || first.filter(f -> f.frames() <= power.framesPerCharge().get()).isPresent()) {
      return first;
    }
    return Optional.of(new PowerFigures.Charge(power.light().id(), power.framesPerCharge().get()));
  }

  private static Optional<PowerFigures.Wish> wish(
      Optional<Plan> plan, Optional<PowerFigures.Pace> pace, Optional<PowerFigures.Charge> charge) {
    return plan.map(
        wished ->
            new PowerFigures.Wish(
                wished.betweenFrames(),
                wished.frames(),
                wished
                    .betweenFrames()
                    .flatMap(
                        wish ->
                            pace.map(
                                p -> p.betweenFrames().value() <= wish.value() * (1 + ROUNDING))),
                wished
                    .frames()
                    .flatMap(
                        frames ->
                            charge.map(
                                c -> (int) Math.ceil(frames / c.frames() * (1 - ROUNDING))))));
  }
}
