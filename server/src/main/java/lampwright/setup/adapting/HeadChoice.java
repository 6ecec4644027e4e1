package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.match.Assignment;
import lampwright.engine.power.PowerRange;
import lampwright.engine.power.PowerSetting;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightComputation;
import lampwright.setup.figures.LightFigures;

/**
 * Gives each light a head of the kit, each piece once, so that the lights miss their levels least
 * over all, weighted by role. Exact for the modifiers that were chosen. A light may be given up
 * where no head is left.
 */
final class HeadChoice {

  private final List<LightFigures> lights;
  private final List<Head> heads;
  private final Weights weights;
  private final List<List<LuxSeconds>> atFullPower;
  private final Map<Long, Chosen> byExposure = new HashMap<>();

  /**
   * Heads for the lights at one shooting exposure.
   *
   * @param heads in the order of the lights; absent for a light that is given up
   * @param powers in the same order
   */
  record Chosen(List<Optional<Head>> heads, List<Optional<PowerSetting>> powers, double cost) {}

  HeadChoice(
      SetupDocument setup,
      List<LightFigures> lights,
      List<Modifier> modifiers,
      List<Head> heads,
      PairedReadings readings,
      Weights weights) {
    this.lights = lights;
    this.heads = heads;
    this.weights = weights;
    this.atFullPower = new ArrayList<>();
    for (int i = 0; i < lights.size(); i++) {
      atFullPower.add(atFullPower(setup, lights.get(i), modifiers.get(i), readings));
    }
  }

  /** What each head would give in a light's place; all but the head is seen to once. */
  private List<LuxSeconds> atFullPower(
      SetupDocument setup, LightFigures light, Modifier modifier, PairedReadings readings) {
    List<LuxSeconds> row = new ArrayList<>();
    Optional<LightAtTarget> seen = Optional.empty();
    for (Head head : heads) {
      Optional<Output.ByReading> together = readings.of(head, modifier);
      LightAtTarget atTarget =
          seen.map(first -> first.withOutput(LightComputation.output(head, together)))
              .orElseGet(
                  () -> LightComputation.atTarget(setup, light.light(), head, modifier, together));
      row.add(atTarget.atFullPower());
      seen = Optional.of(atTarget);
    }
    return row;
  }

  /**
   * The heads for a shooting exposure. Many camera settings share one, so answers are kept.
   *
   * @param shooting the light that exposes a mid-tone rightly
   */
  Chosen at(LuxSeconds shooting) {
    long key = Math.round(Stops.ofRatio(shooting.value()).value() * 1e6);
    return byExposure.computeIfAbsent(key, k -> solve(shooting));
  }

  private Chosen solve(LuxSeconds shooting) {
    int rows = lights.size();
    double[][] cost = new double[rows][heads.size() + rows];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < heads.size() + rows; j++) {
        cost[i][j] = j < heads.size() ? cost(i, j, shooting) : costOfGivingUp(i, j - heads.size());
      }
    }
    List<Integer> columns = Assignment.leastCost(cost).columnOfRow();
    List<Optional<Head>> chosen = new ArrayList<>();
    List<Optional<PowerSetting>> powers = new ArrayList<>();
    double total = 0;
    for (int i = 0; i < rows; i++) {
      int column = columns.get(i);
      total += cost[i][column];
      boolean lit = column < heads.size();
      chosen.add(lit ? Optional.of(heads.get(column)) : Optional.empty());
      powers.add(lit ? power(i, column, shooting) : Optional.empty());
    }
    return new Chosen(chosen, powers, total);
  }

  private double costOfGivingUp(int light, int dummy) {
    return light == dummy
        ? Weights.ofRole(lights.get(light).light().role()) * Weights.GIVEN_UP_STOPS
        : Double.POSITIVE_INFINITY;
  }

  private double cost(int light, int head, LuxSeconds shooting) {
    Optional<PowerSetting> power = power(light, head, shooting);
    if (power.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Head with = heads.get(head);
    double role = Weights.ofRole(lights.get(light).light().role());
    double recycle =
        with.recycle().map(Seconds::value).orElse(0.0) * power.get().set().negated().toFactor();
    return role * Math.abs(power.get().deviation().value())
        + weights.carryPerKg() * with.weightKg().orElse(0.0)
        + weights.pacePerSecond() * recycle;
  }

  /** The dial's setting for a light; empty where its level is unknown or no light gets there. */
  private Optional<PowerSetting> power(int light, int head, LuxSeconds shooting) {
    Optional<Level> level = lights.get(light).level();
    if (level.isEmpty()) {
      return Optional.empty();
    }
    LuxSeconds wanted = shooting.plus(level.get().fromShooting());
    Head with = heads.get(head);
    LuxSeconds full = atFullPower.get(light).get(head);
    return full.value() == 0
        ? Optional.empty()
        : Optional.of(new PowerRange(with.range(), with.step()).quantise(full.stopsOver(wanted)));
  }
}
