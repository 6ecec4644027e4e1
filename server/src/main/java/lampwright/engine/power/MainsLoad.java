package lampwright.engine.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Amperes;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.VoltAmperes;
import lampwright.engine.unit.Watts;

/**
 * What several heads on one circuit draw while all charge at once with their modelling lamps on.
 * For chargers of constant power; the inrush at its peak is several times that.
 *
 * @param mains the supply of the circuit
 * @param heads the heads on it, at most {@value #MOST_HEADS}
 */
public record MainsLoad(Mains mains, List<MainsHead> heads) {

  /** More heads than this are never on one circuit; the search for turns grows with 2^n. */
  public static final int MOST_HEADS = 16;

  /** Rounding of sums: a turn that fits a limit exactly must fit. */
  private static final double ROUNDING = 1e-9;

  /** Copies the heads and checks their number. */
  public MainsLoad {
    heads = List.copyOf(heads);
    Bounds.requireBetween("Heads on a circuit", heads.size(), "", 0, MOST_HEADS);
  }

  /** Returns what all draw for charging at once. */
  public Watts charging() {
    return new Watts(heads.stream().mapToDouble(head -> head.charging().value()).sum());
  }

  /** Returns what the modelling lamps draw, all the time. */
  public Watts modelling() {
    return new Watts(heads.stream().mapToDouble(head -> head.modelling().value()).sum());
  }

  /** Returns charging and modelling lamps together. */
  public Watts total() {
    return charging().plus(modelling());
  }

  /** Returns the current while all charge, {@code I = P / (V pf)}. */
  public Amperes current() {
    return mains.current(total());
  }

  /** Returns the generator that carries it with a margin of 1 or more (source trade-practice). */
  public VoltAmperes generator(double margin) {
    return mains.generator(total(), margin);
  }

  /**
   * Returns how many times longer each head must take to recycle for all to charge at once within
   * the limit: 1 where it is kept already, empty where the modelling lamps alone exceed it.
   */
  public Optional<Double> slowdownFor(Amperes limit) {
    double free = mains.load(limit).value() - modelling().value();
    double wanted = charging().value();
    if (wanted <= free * (1 + ROUNDING)) {
      return Optional.of(1.0);
    }
    return free <= 0 ? Optional.empty() : Optional.of(wanted / free);
  }

  /**
   * Returns the fewest turns in which the heads can charge one after the other within the limit,
   * all modelling lamps on; empty where one head alone is too much for it.
   */
  public Optional<ChargingTurns> turnsFor(Amperes limit) {
    double free = mains.load(limit).value() - modelling().value();
    double[] watts = heads.stream().mapToDouble(head -> head.charging().value()).toArray();
    return ChargingTurns.fewest(watts, free * (1 + ROUNDING))
        .map(turns -> new ChargingTurns(mains, heads, turns));
  }

  /** Returns the current while all charge, with its steps. */
  public Working currentWorking() {
    return Working.of(
        "mains current while all charge",
        current().value(),
        "A",
        "I = P / (V pf)",
        Source.DERIVED,
        totalWorking(),
        Working.given("mains voltage", mains.voltage().value(), "V"),
        Working.given("power factor", mains.powerFactor(), ""));
  }

  /** Returns the generator with its steps. */
  public Working generatorWorking(double margin) {
    return Working.of(
        "generator",
        generator(margin).value(),
        "VA",
        "S = P margin / pf",
        Source.TRADE_PRACTICE,
        totalWorking(),
        Working.given("power factor", mains.powerFactor(), ""),
        Working.given("margin", margin, ""));
  }

  private Working totalWorking() {
    List<Working> parts = new ArrayList<>();
    for (MainsHead head : heads) {
      parts.add(head.chargingWorking());
      parts.add(Working.given("modelling lamp of " + head.name(), head.modelling().value(), "W"));
    }
    return new Working(
        "load while all charge",
        total().value(),
        "W",
        "P = Σ (charging + lamp)",
        Source.DERIVED,
        parts);
  }
}
