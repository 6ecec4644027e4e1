package lampwright.setup.reacting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Stops;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.ShutterComputation;

/**
 * The power of one light: how far each place of its dial puts its level from the wanted one, at
 * every shutter time. Plain numbers, because a search asks them many thousand times.
 */
final class LightDial {

  /** Rounding of doubles, in stops. */
  private static final double ROUNDING = 1e-9;

  private final Light light;
  private final boolean isFree;
  private final Optional<ShutterComputation> shutter;
  private final List<ShutterTime> times;
  private final List<Stops> steps;
  private final double down;
  private final double beforeShutter;

  /** By time and place on the dial; the last place is the one where it stands now. */
  private final double[][] misses;

  private final boolean[] areKnown;

  /**
   * A light's dial.
   *
   * @param nowMiss how far its level is from the wanted one with all dials where they are
   * @param isFree whether its power is set anyhow, so that it takes no dial more
   * @param times of the shutter, the one now first
   */
  LightDial(
      SetupDocument setup, Light light, double nowMiss, boolean isFree, List<ShutterTime> times) {
    this.light = light;
    this.isFree = isFree;
    this.shutter = setup.camera().flatMap(Camera::body).map(ShutterComputation::new);
    this.times = times;
    // A power that is not known cannot be turned to one that is.
    this.steps =
        light.stopsDown().isPresent()
            ? new PowerRange(light.head().range(), light.head().step()).settings()
            : List.of();
    this.down = light.stopsDown().map(Stops::value).orElse(0.0);
    this.beforeShutter = nowMiss + loss(light.stopsDown(), times.getFirst());
    this.misses = new double[times.size()][steps.size() + 1];
    this.areKnown = new boolean[times.size()];
  }

  Light light() {
    return light;
  }

  double weight() {
    return Toll.ofRole(light.role());
  }

  /** How many dials it takes to turn it. */
  int dials() {
    return isFree ? 0 : light.heads();
  }

  boolean isFree() {
    return isFree;
  }

  /** How many steps its dial has; 0 where its power is not known. */
  int steps() {
    return steps.size();
  }

  Stops step(int index) {
    return steps.get(index);
  }

  /** Asks whether a step is where it stands now. */
  boolean isNow(int index) {
    return Math.abs(steps.get(index).value() - down) < ROUNDING;
  }

  /** What more power costs, in weighted stops. */
  double priceOf(int index) {
    return isFree ? 0 : Toll.POWER * Math.max(0, down - steps.get(index).value());
  }

  /** How far its level is at a time, by steps; the last of all is without turning it. */
  double[] missesAt(int time) {
    double[] row = misses[time];
    if (!areKnown[time]) {
      ShutterTime open = times.get(time);
      for (int i = 0; i < steps.size(); i++) {
        Stops step = steps.get(i);
        double stronger = down - step.value();
        row[i] = beforeShutter + stronger - loss(Optional.of(step), open);
      }
      row[steps.size()] = beforeShutter - loss(light.stopsDown(), open);
      areKnown[time] = true;
    }
    return row;
  }

  private double loss(Optional<Stops> power, ShutterTime time) {
    return shutter
        .map(s -> s.effect(light.head(), power, time).wholeFrameOrNone().value())
        .orElse(0.0);
  }
}
