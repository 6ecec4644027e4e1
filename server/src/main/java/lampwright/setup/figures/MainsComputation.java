package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.power.HeatLoad;
import lampwright.engine.power.Mains;
import lampwright.engine.power.MainsHead;
import lampwright.engine.power.MainsLoad;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.WattSeconds;
import lampwright.engine.unit.Watts;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/** Computes what the heads draw from the mains, and which gets hottest. */
final class MainsComputation {

  private static final Watts NO_LAMP = new Watts(0);

  private MainsComputation() {}

  /** Absent without heads on the mains, with too many, and where one's power is not known. */
  static Optional<MainsFigures> mains(SetupDocument setup) {
    List<MainsHead> heads = new ArrayList<>();
    List<LightId> lights = new ArrayList<>();
    boolean lampsKnown = true;
    for (Light light : setup.lights()) {
      if (light.head().feed() != Head.Feed.MAINS) {
        continue;
      }
      if (light.stopsDown().isEmpty() || light.head().recycle().isEmpty()) {
        return Optional.empty();
      }
      lights.add(light.id());
      lampsKnown &= light.head().modellingW().isPresent();
      double share = light.stopsDown().get().negated().toFactor();
      MainsHead head =
          new MainsHead(
              light.id().text(),
              new WattSeconds(light.head().energy().value() * share),
              new Seconds(light.head().recycle().get().value() * share),
              MainsFigures.CHARGING_EFFICIENCY,
              lamp(light));
      for (int i = 0; i < light.heads(); i++) {
        heads.add(head);
      }
    }
    if (heads.isEmpty() || heads.size() > MainsLoad.MOST_HEADS) {
      return Optional.empty();
    }
    Optional<Mains> supply = setup.plan().map(Plan::mains);
    return Optional.of(
        new MainsFigures(
            new MainsLoad(supply.orElse(Plan.USUAL_MAINS), heads),
            lights,
            assumptions(supply.isPresent(), lampsKnown)));
  }

  private static List<String> assumptions(boolean supplyKnown, boolean lampsKnown) {
    List<String> assumptions = new ArrayList<>(3);
    if (!supplyKnown) {
      assumptions.add("The mains are taken as 230 V, the chargers' power factor as 0.65.");
    }
    if (!lampsKnown) {
      assumptions.add("Modelling lamps whose watts are not known are reckoned as nothing.");
    }
    assumptions.add("Of what the chargers draw, 0.8 is taken to reach the capacitors.");
    return assumptions;
  }

  /** The hottest head at the plan's pace, else at that of the slowest light. */
  static Optional<HeatFigures> heat(SetupDocument setup, Optional<PowerFigures.Pace> pace) {
    Optional<Seconds> planned = setup.plan().flatMap(Plan::betweenFrames);
    Optional<Seconds> between = planned.or(() -> pace.map(PowerFigures.Pace::betweenFrames));
    if (between.isEmpty() || between.get().value() == 0) {
      return Optional.empty();
    }
    double framesPerMinute = 60 / between.get().value();
    Optional<HeatFigures> hottest = Optional.empty();
    double most = -1;
    for (Light light : setup.lights()) {
      if (light.stopsDown().isEmpty()) {
        return Optional.empty();
      }
      double energy = light.head().energy().value() * light.stopsDown().get().negated().toFactor();
      HeatLoad load =
          new HeatLoad(new WattSeconds(energy), framesPerMinute * light.pops(), lamp(light));
      if (load.average().value() > most) {
        most = load.average().value();
        hottest = Optional.of(new HeatFigures(light.id(), load, planned.isPresent()));
      }
    }
    return hottest;
  }

  private static Watts lamp(Light light) {
    return light.head().modellingW().map(Watts::new).orElse(NO_LAMP);
  }
}
