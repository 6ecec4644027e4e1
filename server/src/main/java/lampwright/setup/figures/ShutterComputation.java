package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.setup.Light;

/** What a body's shutter does to flashes, at any time. */
final class ShutterComputation {

  /** Rounding of doubles, as a share of the time. */
  private static final double ROUNDING = 1e-9;

  /** A shorter window lets nothing through that anybody could see, in seconds. */
  private static final double NO_WINDOW_S = 1e-8;

  private static final Optional<Stops> NO_LOSS = Optional.of(Stops.ZERO);
  private static final Optional<Stops> NOT_KNOWN = Optional.empty();

  private final Body body;

  ShutterComputation(Body body) {
    this.body = body;
  }

  /** Asks whether a time is shorter than the body's sync time. */
  boolean isFasterThanSync(ShutterTime time) {
    return isFaster(time, body.sync());
  }

  static boolean isFaster(ShutterTime time, ShutterTime sync) {
    return time.seconds() < sync.seconds() * (1 - ROUNDING);
  }

  /** How a head's flash dies away; absent where its duration is not known. */
  static Optional<FlashPulse> pulse(Head head) {
    return head.durationT05()
        .map(
            half ->
                head.control() == Head.FlashControl.CUT
                    ? new FlashPulse.Cut(half)
                    : new FlashPulse.Voltage(half));
  }

  /** What the shutter takes from a light whose power is so far down, at a time. */
  ShutterEffect effect(Light light, Optional<Stops> down, ShutterTime time) {
    return body.shutter() == Body.Shutter.LEAF
        ? leaf(light, down, time)
        : focalPlane(light, down, time);
  }

  private ShutterEffect.Inputs inputs(Light light, Optional<Stops> down, ShutterTime time) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    return new ShutterEffect.Inputs(
        leaf,
        body.sync(),
        time,
        leaf
            ? Optional.empty()
            : body.curtainTravel().or(() -> Optional.of(body.sync().toSeconds())),
        light.head().durationT05(),
        down,
        light.head().longBurstEfficiency());
  }

  private ShutterEffect leaf(Light light, Optional<Stops> down, ShutterTime time) {
    Optional<Stops> loss =
        pulse(light.head())
            .flatMap(pulse -> down.map(d -> ShutterLoss.leaf(pulse, d, time.toSeconds())));
    return new ShutterEffect(
        false, loss, loss.map(whole -> Stops.ZERO), 1, Known.COMPUTED, inputs(light, down, time));
  }

  private ShutterEffect focalPlane(Light light, Optional<Stops> down, ShutterTime time) {
    boolean faster = isFasterThanSync(time);
    Optional<Double> burst = light.head().longBurstEfficiency();
    Known known = body.curtainTravel().isPresent() ? Known.COMPUTED : Known.ESTIMATED;
    Seconds travel = body.curtainTravel().orElseGet(() -> body.sync().toSeconds());
    if (faster && burst.isPresent()) {
      Stops loss = ShutterLoss.longBurst(time.toSeconds(), travel, burst.get());
      return new ShutterEffect(
          true, Optional.of(loss), NO_LOSS, 1, known, inputs(light, down, time));
    }
    if (body.curtainTravel().isEmpty() && !faster) {
      return new ShutterEffect(
          false, NO_LOSS, Optional.empty(), 1, Known.COMPUTED, inputs(light, down, time));
    }
    double window = time.seconds() - travel.value();
    if (window < NO_WINDOW_S) {
      double share = ShutterLoss.litShare(time.toSeconds(), travel);
      return new ShutterEffect(
          false, NO_LOSS, Optional.empty(), share, known, inputs(light, down, time));
    }
    Optional<Stops> edge =
        pulse(light.head())
            .flatMap(
                pulse ->
                    down.flatMap(d -> ShutterLoss.syncEdge(pulse, d, time.toSeconds(), travel)));
    return new ShutterEffect(false, NO_LOSS, edge, 1, known, inputs(light, down, time));
  }

  /** What the whole frame loses, none where that is not known; no more than that is computed. */
  Stops wholeFrameLoss(Light light, Optional<Stops> down, ShutterTime time) {
    if (body.shutter() == Body.Shutter.LEAF
        || (isFasterThanSync(time) && light.head().longBurstEfficiency().isPresent())) {
      return effect(light, down, time).wholeFrameOrNone();
    }
    return Stops.ZERO;
  }

  /** Asks whether the body or the head cannot do a time: part of the frame stays dark. */
  boolean isOutOfReach(Light light, ShutterTime time) {
    return isFasterThanSync(time)
        && (body.shutter() == Body.Shutter.LEAF || effect(light, NOT_KNOWN, time).litShare() < 1);
  }

  /** What a light or the body would have to say for all of its effect. */
  void addNeeds(Light light, String pointer, ShutterTime time, List<String> needs) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    boolean burst = isFasterThanSync(time) && light.head().longBurstEfficiency().isPresent();
    if (!leaf && body.curtainTravel().isEmpty()) {
      needs.add("/camera/body/curtain_travel_ms");
    }
    if (light.head().durationT05().isEmpty() && (leaf || !burst)) {
      needs.add(pointer + "/head/duration_t05_ms");
    }
  }
}
