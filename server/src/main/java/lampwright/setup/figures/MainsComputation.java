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
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/** Computes what the heads draw from the mains, and which gets hottest. */
public final class MainsComputation {

  private static final Watts NO_LAMP = new Watts(0);

  private MainsComputation() {}

  /** Absent without heads on the mains, and where one's time to recycle is not known. */
  public static Optional<MainsFigures> mains(SetupDocument setup) {
    List<Light> fed =
        setup.lights().stream().filter(light -> light.head().feed() == Head.Feed.MAINS).toList();
    if (fed.isEmpty() || fed.stream().anyMatch(light -> light.head().recycle().isEmpty())) {
      return Optional.empty();
    }
    Mains supply = setup.plan().map(Plan::mains).orElse(Plan.USUAL_MAINS);
    List<MainsLoad> loads = new ArrayList<>();
    for (int from = 0; from < fed.size(); from += MainsLoad.MOST_HEADS) {
      int to = Math.min(fed.size(), from + MainsLoad.MOST_HEADS);
      loads.add(
          new MainsLoad(
              supply, fed.subList(from, to).stream().map(MainsComputation::head).toList()));
    }
    return Optional.of(
        new MainsFigures(
            loads,
            fed.stream().map(Light::id).toList(),
            average(setup, fed),
            assumptions(supply, fed)));
  }

  /** All heads of a light charge together; at lower power for so much shorter a time. */
  private static MainsHead head(Light light) {
    return new MainsHead(
        light.id().text(),
        new WattSeconds(light.head().energy().value() * light.heads()),
        light.head().recycle().orElseThrow(),
        MainsFigures.CHARGING_EFFICIENCY,
        new Watts(lamp(light).value() * light.heads()));
  }

  private static Optional<MainsFigures.Average> average(SetupDocument setup, List<Light> fed) {
    Optional<Seconds> between =
        setup.plan().flatMap(Plan::betweenFrames).filter(seconds -> seconds.value() > 0);
    if (between.isEmpty() || fed.stream().anyMatch(light -> light.stopsDown().isEmpty())) {
      return Optional.empty();
    }
    double energy = 0;
    double lamps = 0;
    for (Light light : fed) {
      energy += flash(light).value() * light.heads() * light.pops();
      lamps += lamp(light).value() * light.heads();
    }
    double charging = energy / (between.get().value() * MainsFigures.CHARGING_EFFICIENCY);
    return Optional.of(
        new MainsFigures.Average(
            new WattSeconds(energy), between.get(), new Watts(charging + lamps)));
  }

  private static List<Said> assumptions(Mains supply, List<Light> fed) {
    List<Said> assumptions = new ArrayList<>(4);
    if (supply.voltage().equals(Plan.USUAL_MAINS.voltage())) {
      assumptions.add(Said.of("figuring.mains.volts"));
    }
    if (supply.powerFactor() == Plan.USUAL_MAINS.powerFactor()) {
      assumptions.add(Said.of("figuring.mains.factor", Filling.number(0.65, 2)));
    }
    if (fed.stream().anyMatch(light -> light.head().modellingW().isEmpty())) {
      assumptions.add(Said.of("figuring.mains.lamps"));
    }
    assumptions.add(Said.of("figuring.mains.charging", Filling.number(0.8, 1)));
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
      HeatLoad load = new HeatLoad(flash(light), framesPerMinute * light.pops(), lamp(light));
      if (load.average().value() > most) {
        most = load.average().value();
        hottest = Optional.of(new HeatFigures(light.id(), load, planned.isPresent()));
      }
    }
    return hottest;
  }

  /** Of one head at the power that is set. */
  private static WattSeconds flash(Light light) {
    double share = light.stopsDown().orElseThrow().negated().toFactor();
    return new WattSeconds(light.head().energy().value() * share);
  }

  private static Watts lamp(Light light) {
    return light.head().modellingW().map(Watts::new).orElse(NO_LAMP);
  }
}
